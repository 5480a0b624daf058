/**
 * Gives objects of one kind the same fields in the same order, `undefined` where one lacks them. Items of a sheet leave out what does
 * not concern them, so that there are some seventy shapes of them; asked line by line, one shape is much faster to look into.
 *
 * @param list all objects of the kind
 * @returns a function that copies one of them into the common shape; its values are the same ones
 * @example oneShape([{ a: 1 }, { b: 2 }])({ b: 2 }) // { a: undefined, b: 2 }
 */
export const oneShape = <Kind extends object>(list: readonly Kind[]): ((one: Kind) => Kind) => {
  const names = new Set(list.flatMap((one) => Object.keys(one)));
  const blank = Object.fromEntries(Array.from(names, (name) => [name, undefined]));
  return (one) => ({ ...blank, ...one });
};
