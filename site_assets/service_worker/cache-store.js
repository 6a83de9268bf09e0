// The one store of saved files. VERSION, UNSET, GROUPS and TYPES stand above, written at build.
//
// A file is kept under its hash, wherever it stands in the site: files of several
// versions lie side by side, cannot be taken for one another, and one that two
// versions share is kept once. The browser may drop any of them at any time, so what
// is saved is never remembered: the store is looked through for each file of the list.

const SCOPE = self.registration.scope;
const STORE = `offline ${new URL(SCOPE).pathname}`;
const SNAPSHOTS = `snapshot ${new URL(SCOPE).pathname}`; // the pages' own, scripts/snapshot-store.js; no version's clean-up touches it

const FILES = new Map();
for (const [group, listed] of Object.entries(GROUPS)) {
  for (const [path, [integrity, bytes, packed]] of Object.entries(listed)) {
    const address = new URL(path.split('/').map(encodeURIComponent).join('/'), SCOPE).href;
    // The type goes along because equal bytes may be served as two types.
    const ending = /\.(\w+)$/.exec(path)?.[1] ?? '';
    const key = keptAs({ hash: integrity, type: ending });
    FILES.set(path, { path, group, integrity, bytes, packed, address, key, type: TYPES[ending] ?? OTHER_TYPE });
  }
}

function keptAs(what) {
  return `${SCOPE}?${new URLSearchParams(what)}`;
}

function filesOf(group) {
  return [...FILES.values()].filter((file) => file.group === group);
}

/** What the device lacks of a group. */
async function missingOf(group) {
  const kept = new Set(await keptKeys());
  return filesOf(group).filter(({ key }) => !kept.has(key));
}

/** Opening a store would make it, and after a reset none must be left. */
async function keptKeys() {
  if (!await caches.has(STORE)) return [];
  const store = await caches.open(STORE);
  return (await store.keys()).map(({ url }) => url);
}

function bytesOf(files) {
  return files.reduce((sum, file) => sum + file.bytes, 0);
}

/** A copy that cannot be read, or whose bytes are no longer those of the list, is as good as none and goes. */
async function keptCopy(file) {
  const find = () => caches.match(file.key, { cacheName: STORE });
  try {
    const copy = await find();
    if (!copy) return undefined;
    // What was read is used up; found again, the browser still has with it what it made of a script before.
    if (await integrityOf(await copy.arrayBuffer()) === file.integrity) return await find();
  } catch {
    // The device can no longer read it.
  }
  await drop(file).catch(() => {});
  return undefined;
}

async function drop(file) {
  if (await caches.has(STORE)) await (await caches.open(STORE)).delete(file.key);
}

/** Notes for later versions that the reader has had a group whole, and when in this one; whether it still is, the files tell. */
async function markComplete(group) {
  for (const note of [keptAs({ whole: group }), dayOf(group)]) {
    if (await caches.match(note, { cacheName: STORE })) continue;
    const store = await caches.open(STORE);
    await store.put(note, new Response(String(Date.now())));
  }
}

const dayOf = (group) => keptAs({ saved: group, version: VERSION });

/** When this version had a group whole, in milliseconds; undefined where nothing says so. */
async function savedOn(group) {
  const note = await caches.match(dayOf(group), { cacheName: STORE });
  return note && Number(await note.text());
}

/** Whether any version, this one or an older, has had the group whole. */
async function hasBeenWhole(group) {
  return (await keptKeys()).some((url) => new URL(url).searchParams.get('whole') === group);
}

/** Removes what belongs to other versions only; what a newer one has saved is left to it. */
async function dropOtherVersions() {
  if (self.registration.installing || self.registration.waiting) return;
  const wanted = new Set(Object.keys(GROUPS).flatMap((group) => [keptAs({ whole: group }), dayOf(group)]));
  for (const file of FILES.values()) wanted.add(file.key);
  const store = await caches.open(STORE);
  for (const request of await store.keys()) {
    if (!wanted.has(request.url)) await store.delete(request);
  }
}
