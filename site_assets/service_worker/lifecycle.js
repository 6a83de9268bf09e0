// The worker's life: saved before it is installed, in charge only when asked, gone on reset.

self.addEventListener('install', (event) => {
  event.waitUntil(saveBeforeInstalling());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOtherVersions().then(() => self.clients.claim()));
});

self.addEventListener('message', (event) => {
  const orders = {
    // Of a store that cannot be read nothing is said to be kept; a page must not wait for ever.
    state: async () => event.ports[0].postMessage(await state().catch(() => null)),
    list: () => event.ports[0].postMessage([...FILES.values()].map(({ key, bytes, group }) => ({ key, bytes, group }))),
    save: saveEverything,
    'take-over': () => self.skipWaiting(),
    reset,
  };
  event.waitUntil(orders[event.data.kind]());
});

async function saveBeforeInstalling() {
  await save('reading');
  // Whoever could calculate without a network must still be able to after the update.
  if (await hasBeenWhole('calculating')) await save('calculating');
}

async function saveEverything() {
  try {
    await save('reading');
    await save('calculating');
  } catch {
    // The pages have been told what failed.
  }
}

/** What is kept, looked through now. Calculators of which nothing is kept are not missed: they are not saved. */
async function state() {
  const lacks = { reading: await missingOf('reading'), calculating: await missingOf('calculating') };
  if (lacks.calculating.length === 0) await markComplete('calculating');
  const missing = [...lacks.reading, ...lacks.calculating];
  const begun = Object.keys(GROUPS).filter((group) => group === 'reading' || lacks[group].length < filesOf(group).length);
  return {
    version: VERSION,
    reading: lacks.reading.length === 0,
    calculating: lacks.calculating.length === 0,
    missing: begun.flatMap((group) => lacks[group]).length,
    files: begun.flatMap(filesOf).length,
    bytes: bytesOf(onceEach([...FILES.values()])) - bytesOf(onceEach(missing)),
    when: await savedOn(lacks.calculating.length ? 'reading' : 'calculating'),
  };
}

async function reset() {
  stopSaving();
  await caches.delete(STORE);
  await caches.delete(SNAPSHOTS);
  await self.registration.unregister();
  await broadcast({ kind: 'reset' });
}
