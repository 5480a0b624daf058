/** The little of WebAssembly that loading the schema engine needs; the types of the DOM, where it is declared, have no place here. */
declare namespace WebAssembly {
  type Instance = { readonly exports: Readonly<Record<string, unknown>> };
  function instantiate(bytes: Uint8Array, imports: object): Promise<{ instance: Instance }>;
}
