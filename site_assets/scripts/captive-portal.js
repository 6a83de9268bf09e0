// Some networks answer every request with a page of their own until someone signs in.

const PATIENCE = 10_000; // ms

/** Whether the network answers in the place of the host. `worker`: the address of the service worker's script, which is
    always there, is a script, and comes from the network even where all else is saved. */
export async function isBehindPortal(worker) {
  const ask = (redirect) => fetch(worker, { cache: "no-store", redirect, signal: AbortSignal.timeout(PATIENCE) });
  try {
    const answer = await ask("manual");
    if (answer.type !== "opaqueredirect") return isOther(answer);
    return await ask("follow").then(isOther, () => true); // a handbook that has moved leads to its script
  } catch {
    return false; // no network at all
  }
}

function isOther({ ok, status, headers }) {
  const needsSignIn = 511;
  return status === needsSignIn || (ok && Boolean(headers.get("content-type")?.includes("html")));
}
