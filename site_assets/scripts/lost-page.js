// The page for an address without one: a page of this handbook that the device has lost is told apart, and can be asked for again.

export function startLostPage(told) {
  const lost = new URLSearchParams(location.search).get("lost");
  if (lost === null) return;
  const top = new URL("./", location.href);
  const { href } = new URL(top.href + lost);
  if (!href.startsWith(top.href)) return; // never leaves the handbook, whatever the address says
  const link = told.querySelector("a");
  link.href = href;
  link.textContent = lost.split("?")[0];
  told.hidden = false;
  document.querySelector("[data-no-page]").hidden = true;
}
