// The worker's life: saved before it is installed, in charge only when asked, gone on reset.

self.addEventListener('install', (event) => {
  event.waitUntil(saveBeforeInstalling());
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOtherVersions().then(() => self.clients.claim()));
});

self.addEventListener('message', (event) => {
  const orders = {
    state: async () => event.ports[0].postMessage(await state()),
    save: saveEverything,
    'take-over': () => self.skipWaiting(),
    reset,
  };
  event.waitUntil(orders[event.data.kind]());
});

async function saveBeforeInstalling() {
  await save('reading');
  // Whoever could calculate without a network must still be able to after the update.
  if (await someVersionHas('calculating')) await save('calculating');
}

async function saveEverything() {
  try {
    await save('reading');
    await save('calculating');
  } catch {
    // The pages have been told what failed.
  }
}

async function state() {
  const [reading, calculating] = await Promise.all([isWhole('reading'), isWhole('calculating')]);
  return { version: VERSION, reading, calculating };
}

async function reset() {
  stopSaving();
  wholeGroups.clear();
  await caches.delete(STORE);
  await self.registration.unregister();
  await tell({ kind: 'reset' });
}
