/**
 * A person signed in to the service over HTTP, as a browser would be.
 *
 * @returns a function that gets a path under `/api/v1` as JSON
 */
export async function signIn(address, { email, password }) {
  const origin = new URL(address).origin;
  const answer = await fetch(`${address}/api/v1/sessions`, {
    method: "POST",
    headers: { "content-type": "application/json", origin },
    body: JSON.stringify({ email, password }),
  });
  if (!answer.ok) throw new Error(`Signing in as ${email} was refused: ${await answer.text()}`);
  const cookie = answer.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
  return async (path) => {
    const got = await fetch(`${address}/api/v1${path}`, { headers: { cookie } });
    if (!got.ok) throw new Error(`GET ${path} was refused with ${got.status}: ${await got.text()}`);
    return got.json();
  };
}
