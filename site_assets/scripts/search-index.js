/* Holds back the request for the search's index, which is larger than all else of a page, until the search is opened.
   A classic script, because the theme's own asks as soon as it runs. */
(() => {
  const { searchOpener, searchField, searchIndex } = document.currentScript.dataset;
  const given = new URLSearchParams(location.search);
  if (given.has("q") || given.has("h")) return; // words to search for, or words that were found, to be marked

  const { open, send } = XMLHttpRequest.prototype;
  const isForIndex = new WeakSet();
  let held = [];

  XMLHttpRequest.prototype.open = function (...request) {
    if (String(request[1]).endsWith(searchIndex)) isForIndex.add(this);
    return open.apply(this, request);
  };
  XMLHttpRequest.prototype.send = function (...body) {
    if (isForIndex.has(this) && held) held.push(() => send.apply(this, body));
    else send.apply(this, body);
  };

  function release() {
    for (const sendNow of held ?? []) sendNow();
    held = null;
  }
  document.addEventListener("focusin", ({ target }) => { if (target.matches(searchField)) release(); });
  document.addEventListener("click", ({ target }) => { if (target.closest(searchOpener)) release(); });
})();
