// Saves one group whole, or fails as a whole and keeps what it has for the next try.

const AT_ONCE = 4;
const running = new Map();

function save(group) {
  if (!running.has(group)) {
    const stop = new AbortController();
    const result = saveWhole(group, stop)
      .catch(async (error) => {
        if (!stop.signal.reason?.reset) {
          await broadcast({ kind: 'failed', group, file: error.file ?? '', why: error.why ?? 'stopped' });
        }
        throw error;
      })
      .finally(() => running.delete(group));
    running.set(group, { result, stop });
  }
  return running.get(group).result;
}

async function saveWhole(group, stop) {
  await makeRenamedPages(await missingOf(group), stop.signal).catch(() => {}); // what cannot be made is fetched
  stop.signal.throwIfAborted();
  const missing = onceEach(await missingOf(group));
  if (missing.length === 0) return markComplete(group);
  const total = bytesOf(onceEach(filesOf(group)));
  let done = total - bytesOf(missing);

  async function saveNext() {
    while (missing.length > 0 && !stop.signal.aborted) {
      const file = missing.shift();
      await putInAnyCase(file, stop.signal);
      done += file.bytes;
      await broadcast({ kind: 'saving', group, done, total });
    }
  }

  await broadcast({ kind: 'saving', group, done, total });
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, saveNext));
  } catch (error) {
    stop.abort();
    throw error;
  }
  stop.signal.throwIfAborted();
  await markComplete(group);
  await broadcast({ kind: 'saved', group });
}

/** What only makes a start short gives way to what is read. */
async function putInAnyCase(file, signal) {
  try {
    await put(file, await verifiedCopy(file, signal));
  } catch (error) {
    if (error.why !== 'room' || !await caches.delete(SNAPSHOTS)) throw error;
    await put(file, await verifiedCopy(file, signal));
  }
}

/** Equal files are kept once, so they are fetched once. */
function onceEach(files) {
  return [...new Map(files.map((file) => [file.key, file])).values()];
}

async function verifiedCopy(file, signal) {
  // The browser's own cache may hold a stale or broken copy: the second try goes past it.
  for (const cache of ['no-cache', 'reload']) {
    try {
      return await shortestCopy(file, { cache, signal });
    } catch (error) {
      if (signal?.aborted || error.name === 'TimeoutError') break;
    }
  }
  throw failure(file, 'fetch');
}

/** A file with a compressed twin is fetched as that, where the host does not compress the file by itself. */
async function shortestCopy(file, options) {
  let response = await fetchUnlessSilent(file.address, options);
  if (file.packed && response.ok && isUncompressed(response)) {
    response.body.cancel(); // how it begins was enough
    const bytes = await bytesOfTwin(file.address, options).catch(() => undefined);
    if (bytes && await integrityOf(bytes) === file.integrity) return asListed(file, bytes, response);
    response = await fetchUnlessSilent(file.address, options);
  }
  const bytes = await response.arrayBuffer();
  if (await integrityOf(bytes) !== file.integrity) throw new Error('other bytes');
  return asListed(file, bytes, response);
}

// Without its address: the next version may have this file at another, which a script's imports start from. A host
// that once calls it by a wrong type must not have it kept so, for no browser runs a script of another type.
function asListed({ type }, bytes, { headers }) {
  const kept = new Headers(headers);
  kept.set('content-type', type);
  return new Response(bytes, { headers: kept });
}

async function put(file, response) {
  const store = await caches.open(STORE);
  try {
    await store.put(file.key, response);
  } catch (error) {
    throw failure(file, error.name === 'QuotaExceededError' ? 'room' : 'fetch');
  }
}

function failure({ path }, why) {
  return Object.assign(new Error(`${why}: ${path}`), { file: path, why });
}

function stopSaving() {
  for (const { stop } of running.values()) stop.abort({ reset: true });
}

async function broadcast(message) {
  const pages = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  for (const page of pages) {
    if (page.url.startsWith(SCOPE)) page.postMessage({ version: VERSION, ...message });
  }
}
