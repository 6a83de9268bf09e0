// The one store of saved files. VERSION, GROUPS and DIGESTS stand above, written at build.
//
// A file is kept under its hash, wherever it stands in the site: files of several
// versions lie side by side, cannot be taken for one another, and one that two
// versions share is kept once. A group counts as saved only when its mark is in the
// store, and the mark is written last: until then nothing of it is served.

const SCOPE = self.registration.scope;
const STORE = `offline ${new URL(SCOPE).pathname}`;

const FILES = new Map();
for (const [group, listed] of Object.entries(GROUPS)) {
  for (const [path, [integrity, bytes]] of Object.entries(listed)) {
    const address = new URL(path.split('/').map(encodeURIComponent).join('/'), SCOPE).href;
    // The type goes along because equal bytes may be served as two types.
    const key = keptAs({ hash: integrity, type: /\.(\w+)$/.exec(path)?.[1] ?? '' });
    FILES.set(path, { path, group, integrity, bytes, address, key });
  }
}

// Spares a look into the store at every request.
const wholeGroups = new Set();

function keptAs(what) {
  return `${SCOPE}?${new URLSearchParams(what)}`;
}

/** The group's files, equal ones once. */
function filesOf(group) {
  const files = [...FILES.values()].filter((file) => file.group === group);
  return [...new Map(files.map((file) => [file.key, file])).values()];
}

function bytesOf(files) {
  return files.reduce((sum, file) => sum + file.bytes, 0);
}

function markOf(group) {
  return keptAs({ whole: group, files: DIGESTS[group] });
}

async function isWhole(group) {
  if (!wholeGroups.has(group) && await caches.match(markOf(group), { cacheName: STORE })) {
    wholeGroups.add(group);
  }
  return wholeGroups.has(group);
}

async function savedCopy(file) {
  if (!await isWhole(file.group)) return undefined;
  return caches.match(file.key, { cacheName: STORE });
}

/** Whether any version, this one or an older, has the group whole. */
async function someVersionHas(group) {
  const store = await caches.open(STORE);
  const kept = await store.keys();
  return kept.some(({ url }) => new URL(url).searchParams.get('whole') === group);
}

/** Removes what belongs to other versions only; what a newer one has saved is left to it. */
async function dropOtherVersions() {
  if (self.registration.installing || self.registration.waiting) return;
  const wanted = new Set(Object.keys(GROUPS).map(markOf));
  for (const file of FILES.values()) wanted.add(file.key);
  const store = await caches.open(STORE);
  for (const request of await store.keys()) {
    if (!wanted.has(request.url)) await store.delete(request);
  }
}
