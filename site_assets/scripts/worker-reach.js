// What code in a worker can reach: files of the handbook, asked for and told nothing. A host that sends no content
// policy leaves a worker without one, so the worker closes its own doors before anything else in it runs.

const ROOT = new URL("../../../", import.meta.url).href; // this file is kit/ID/scripts/worker-reach.js
const CLOSED = [
  "eval", "XMLHttpRequest", "WebSocket", "WebSocketStream", "EventSource", "WebTransport", "importScripts", "Worker",
  "SharedWorker",
];

/** Whether a request brings a file of the handbook and carries nothing away. */
function isOurs({ url, method }) {
  const { href, search, username, password } = new URL(url);
  return href.startsWith(ROOT) && !search && !username && !password && method === "GET";
}

function refusal(what) {
  return new TypeError(`The handbook's worker does not reach ${what}`);
}

/** Every object that has this name: the scope itself and those it takes after. */
function holders(name) {
  const found = [];
  for (let holder = self; holder; holder = Object.getPrototypeOf(holder)) {
    if (Object.hasOwn(holder, name)) found.push(holder);
  }
  return found;
}

const browserFetch = self.fetch.bind(self);

async function fetchOurs(resource, options) {
  const request = new Request(resource, options);
  if (!isOurs(request)) throw refusal(request.url);
  return browserFetch(request, { redirect: "error" }); // a policy would be asked again after a redirect
}

// The scope's own may be covered again, to count what comes; beneath it this one stays.
for (const holder of holders("fetch")) {
  Object.defineProperty(holder, "fetch", { value: fetchOurs, writable: holder === self, configurable: holder === self });
}
if (!Object.hasOwn(self, "fetch")) {
  Object.defineProperty(self, "fetch", { value: fetchOurs, writable: true, configurable: true });
}

for (const name of CLOSED) {
  for (const holder of holders(name)) {
    Object.defineProperty(holder, name, { value: undefined, writable: false, configurable: false });
  }
}

// Text never becomes code, as under the policy: with an import in it, it could bring a script from anywhere.
for (const made of [function () {}, async function () {}, function* () {}, async function* () {}]) {
  const refuse = function Function() { throw refusal("code made of text"); };
  refuse.prototype = made.constructor.prototype;
  Object.defineProperty(Object.getPrototypeOf(made), "constructor", { value: refuse, writable: false, configurable: false });
}
Object.defineProperty(self, "Function", { value: Function.prototype.constructor, writable: false, configurable: false });
for (const name of ["setTimeout", "setInterval"]) {
  const later = self[name].bind(self);
  const withCode = (action, ...rest) => {
    if (typeof action !== "function") throw refusal("code made of text");
    return later(action, ...rest);
  };
  for (const holder of holders(name)) Object.defineProperty(holder, name, { value: withCode, writable: false, configurable: false });
}
