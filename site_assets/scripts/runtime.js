// Starts the calculating worker once and asks it; starting late or not at all is told, never silent.

const SILENCE_ALLOWED = 45_000; // ms without any sign of progress

let worker;
let waiting = new Map();
let nextId = 1;
let silence;
const listeners = new Set();
const report = (news) => { for (const listen of listeners) listen(news); };

function expectSign() {
  clearTimeout(silence);
  silence = setTimeout(() => stop("late"), SILENCE_ALLOWED);
}

function stop(state) {
  clearTimeout(silence);
  worker?.terminate();
  worker = undefined;
  const unanswered = waiting;
  waiting = new Map();
  report({ state });
  for (const { reject } of unanswered.values()) reject(new Error(state));
  document.dispatchEvent(new CustomEvent("calculator:failed"));
}

/* A newer version on the server has scripts of its own in the place of those that this page needs. */
async function stopFor(file) {
  const stopped = worker;
  stopped.terminate(); // it would go on to tell of what follows from this
  const gone = await fetch(file, { method: "HEAD" }).then(({ status }) => status === 404, () => false);
  if (worker === stopped) stop(gone ? "gone" : "failed");
}

function receive({ data }) {
  if (data.loaded) {
    expectSign();
    report({ state: "loading", part: data.loaded / data.total });
  } else if (data.ready) {
    clearTimeout(silence);
    report({ state: "ready" });
    document.dispatchEvent(new CustomEvent("calculator:ready"));
  } else if (data.part) {
    waiting.get(data.id)?.onPart(data.part);
  } else if (data.reply) {
    waiting.get(data.id)?.resolve(data.reply);
    waiting.delete(data.id);
  } else if (data.missing) {
    stopFor(data.missing);
  } else if (data.failed) {
    stop("failed");
  }
}

export function runtimeOf(form) {
  const runtime = JSON.parse(form.dataset.runtime);
  return { ...runtime, folder: new URL(runtime.folder, location.href).href };
}

export function startRuntime({ folder, library, total, lock }, onReport) {
  listeners.add(onReport);
  if (worker) return;
  if (!globalThis.WebAssembly) return stop("unsupported");
  document.dispatchEvent(new CustomEvent("calculator:starting"));
  report({ state: "loading", part: 0 });
  const script = new URL("calculator-worker.js", import.meta.url);
  try {
    worker = new Worker(script, { type: "module" });
  } catch {
    return stop("failed");
  }
  worker.onmessage = receive;
  worker.onerror = () => stopFor(script);
  expectSign();
  worker.postMessage({ start: { folder, library: `${folder}${library}`, total, lock } });
}

export function ask(slug, query) {
  const id = nextId++;
  return new Promise((resolve, reject) => {
    if (!worker) throw new Error("stopped"); // what stopped it has been told
    waiting.set(id, { resolve, reject });
    worker.postMessage({ id, slug, query });
  });
}

/* Asks for a whole table. `onPart` gets each piece of it; `done` is kept when all are there or it was stopped. */
export function askTable(slug, table, onPart) {
  return askParts({ slug, table }, onPart);
}

/* Asks how far an answer may move, the same way. */
export function askRanges(slug, ranges, onPart) {
  return askParts({ slug, ranges }, onPart);
}

function askParts(message, onPart) {
  const id = nextId++;
  const done = new Promise((resolve, reject) => {
    if (!worker) throw new Error("stopped");
    waiting.set(id, { resolve, reject, onPart });
    worker.postMessage({ id, ...message });
  });
  return { done, stop: () => worker?.postMessage({ id, stop: true }) };
}
