// Has a memory snapshot made, once an answer is there and the page is quiet, so that later starts are short.
// It is made, started from and compared in workers of their own; what the reader asks goes on beside them.

import { openConnection } from "./python-connection.js";
import { handbookScope, startedFromFiles } from "./runtime.js";
import { approveSnapshot, hasSnapshot, removeSnapshot } from "./snapshot-store.js";

const QUIET = 5_000; // ms without a new answer
const TIME_ALLOWED = 180_000; // ms for making and checking; a slow phone takes a minute
const ROOM_NEEDED = 60e6; // bytes: a snapshot takes 25 MB, and an update of the handbook must still find room
const MEMORY_NEEDED = 2; // GB, as far as a browser tells: making takes 130 MB for some seconds
const MOST_FAILURES = 2; // of snapshots of the same files
const FAILURES = "snapshot-failures";

let pause;
let running; // what ends the workers that are at it
let removed = false; // the reader wants nothing kept

export function startSnapshots() {
  // As on a page that did not come over https; one that was opened from a disk keeps nothing.
  if (!globalThis.caches || !navigator.locks || location.protocol === "file:") return;
  document.addEventListener("calculator:answered", makeWhenQuiet);
  document.addEventListener("snapshot:failed", ({ detail }) => setFailures(detail, failures(detail) + 1));
  document.addEventListener("handbook:removed", remove);
}

function makeWhenQuiet() {
  clearTimeout(pause);
  const whenIdle = window.requestIdleCallback ?? setTimeout;
  pause = setTimeout(() => whenIdle(() => make().catch(() => {})), QUIET);
}

async function make() {
  const started = startedFromFiles();
  if (!started || running || removed) return;
  if (document.querySelector("[data-offline-state=saving]")) return makeWhenQuiet();
  const { page, target } = started;
  if (failures(target) >= MOST_FAILURES || !await hasRoom()) return;
  // One maker at a time, whichever tab it is in.
  await navigator.locks.request(`snapshot ${target.scope}`, { ifAvailable: true }, async (lock) => {
    if (lock && !running && !removed && !await hasSnapshot(target)) await makeOne(page, target);
  });
}

async function makeOne(page, target) {
  const before = failures(target);
  running = new AbortController();
  const signal = AbortSignal.any([running.signal, AbortSignal.timeout(TIME_ALLOWED)]);
  addEventListener("pagehide", () => setFailures(target, before), { signal });
  setFailures(target, before + 1); // a page that is ended for want of memory cannot count it afterwards
  try {
    const { hash, replies } = await made(page, target, signal);
    if (await repliesFrom(page, target, hash, signal) !== replies) throw new Error("other answers");
    await approveSnapshot(target, hash);
    setFailures(target, before);
  } catch {
    await removeSnapshot(target).catch(() => {});
  }
  running.abort();
  running = undefined;
}

function made(page, target, signal) {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("snapshot-worker.js", import.meta.url), { type: "module" });
    const end = () => { worker.terminate(); reject(new Error("not made")); };
    worker.onmessage = ({ data }) => { if (data.hash) resolve(data); end(); };
    worker.onerror = end;
    signal.addEventListener("abort", end);
    worker.postMessage({ page, target });
  });
}

function repliesFrom(page, { scope }, hash, signal) {
  return new Promise((resolve, reject) => {
    const onNews = (news) => { if (news.restoring === false || news.gone || news.failed || news.missing) end(); };
    const connection = openConnection({ page, scope, hash }, onNews);
    const end = () => { connection.close(); reject(new Error("not restored")); };
    signal.addEventListener("abort", end);
    connection.ask({ message: { examples: true }, reject, resolve: ({ replies }) => { resolve(replies); end(); } });
  });
}

async function remove() {
  removed = true;
  running?.abort();
  await removeSnapshot({ scope: handbookScope() }).catch(() => {});
}

async function hasRoom() {
  if (navigator.deviceMemory < MEMORY_NEEDED) return false;
  const { quota = Infinity, usage = 0 } = await navigator.storage?.estimate?.() ?? {};
  return quota - usage >= ROOM_NEEDED;
}

// Storage that is blocked forgets; then there is none for a snapshot either.
function failures({ key }) {
  try {
    const noted = JSON.parse(localStorage.getItem(FAILURES));
    return noted?.key === key ? noted.count : 0;
  } catch {
    return 0;
  }
}

function setFailures({ key }, count) {
  try {
    if (count) localStorage.setItem(FAILURES, JSON.stringify({ key, count }));
    else localStorage.removeItem(FAILURES);
  } catch {
    /* as above */
  }
}
