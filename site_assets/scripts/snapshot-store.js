// The memory snapshot that this device keeps: the memory of a Python in which every calculator has answered once.
//
// It lies in a cache of its own, beside the saved files of the handbook at `scope`. `key` names the files that it was
// made of, because old memory would go on answering with old rules. Apart from the bytes stands the note that they were
// checked, with their hash: damaged memory can answer wrongly without any error, so none is used before it is hashed.

const FORMAT = 1; // goes up when what makes or restores a snapshot changes

const cacheOf = ({ scope }) => `snapshot ${new URL(scope).pathname}`; // the service worker's reset knows it by this name
const addressOf = (what, { scope, key }) => `${scope}?${new URLSearchParams({ [what]: key, format: FORMAT })}`;

/** The checked bytes, or undefined; what is damaged or of other files is removed. `hash`: of bytes not approved yet. */
export async function readSnapshot(target, hash) {
  if (!self.caches || !await caches.has(cacheOf(target))) return undefined; // opening would make it
  const store = await caches.open(cacheOf(target));
  await removeOthers(store, target);
  const expected = hash ?? await (await store.match(addressOf("checked", target)))?.text();
  if (!expected) return undefined;
  const bytes = await (await store.match(addressOf("memory", target)))?.arrayBuffer();
  if (bytes && await hashOf(bytes) === expected) return bytes;
  await caches.delete(cacheOf(target));
  return undefined;
}

/** Keeps bytes, not yet to be used by a page, and returns their hash. */
export async function putSnapshot(target, bytes) {
  const hash = await hashOf(bytes);
  const store = await caches.open(cacheOf(target));
  await store.put(addressOf("memory", target), new Response(bytes));
  return hash;
}

/** Notes that a start from the bytes of this hash was tried and answers as it must. */
export async function approveSnapshot(target, hash) {
  const store = await caches.open(cacheOf(target));
  await store.put(addressOf("checked", target), new Response(hash));
}

export async function hasSnapshot(target) {
  if (!await caches.has(cacheOf(target))) return false;
  return Boolean(await caches.match(addressOf("checked", target), { cacheName: cacheOf(target) }));
}

export async function removeSnapshot(target) {
  if (self.caches) await caches.delete(cacheOf(target));
}

async function removeOthers(store, target) {
  const own = [addressOf("checked", target), addressOf("memory", target)];
  for (const request of await store.keys()) if (!own.includes(request.url)) await store.delete(request);
}

/** Size and SHA-256. */
async function hashOf(bytes) {
  const digest = await crypto.subtle.digest("SHA-256", bytes);
  const hex = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${bytes.byteLength} ${hex}`;
}
