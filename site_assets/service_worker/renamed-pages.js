// Pages that only call scripts, styles and their own version by other names are not fetched: they are made of those kept.
//
// A changed style gives the folder of scripts and styles another name, which every page holds; and a page's version
// (build/runtime_list.py) is a hash of all else in it. What is made counts only where its hash is that of the list: then
// it is the published page to the byte, whatever it was made of.

const NAMED_KIT = /\bkit\/([\w-]+)\//;
const NAMED_VERSION = /(&quot;version&quot;: &quot;)\w+(&quot;)/;
const KIT = [...FILES.keys()].map((path) => NAMED_KIT.exec(path)).find(Boolean)?.[1];

/** Keeps every page that can be made so; what is left of the files that are missing is fetched. */
async function makeRenamedPages(missing, signal) {
  const wanted = new Map(missing.filter(({ path }) => path.endsWith('.html')).map((file) => [file.integrity, file]));
  if (wanted.size === 0 || !KIT || !await caches.has(STORE)) return;
  const listed = new Set([...FILES.values()].map(({ key }) => key));
  const store = await caches.open(STORE);
  for (const request of await store.keys()) {
    const isOlderPage = new URL(request.url).searchParams.get('type') === 'html' && !listed.has(request.url);
    if (isOlderPage) await makeRenamedPage(await store.match(request), wanted);
    if (wanted.size === 0 || signal.aborted) return;
  }
}

async function makeRenamedPage(copy, wanted) {
  const content = new TextEncoder().encode(await renamed(await copy.text()));
  const integrity = await integrityOf(content);
  const file = wanted.get(integrity);
  if (!file) return; // it says something else, or nothing is missing of it
  await put(file, new Response(content, { headers: copy.headers }));
  wanted.delete(integrity);
}

/** A page under the names that this version gives: of the kit, and of the page itself, which tells of all else in it. */
async function renamed(html) {
  const old = NAMED_KIT.exec(html)?.[1];
  const page = old ? html.replaceAll(`kit/${old}/`, `kit/${KIT}/`) : html;
  if (!NAMED_VERSION.test(page)) return page;
  const named = (version) => page.replace(NAMED_VERSION, `$1${version}$2`);
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(named(UNSET))));
  return named([...digest.slice(0, 6)].map((byte) => byte.toString(16).padStart(2, '0')).join(''));
}
