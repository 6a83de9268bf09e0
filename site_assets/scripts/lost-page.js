// The page for an address without one: a page of this handbook that the device has lost is told apart, and can be asked for again.

export function startLostPage(told) {
  const lost = new URLSearchParams(location.search).get("lost");
  if (lost === null) return;
  const top = new URL("./", location.href);
  const link = told.querySelector("a");
  link.href = top.href + lost; // never leaves the handbook, whatever the address says
  link.textContent = lost.split("?")[0];
  told.hidden = false;
  document.querySelector("[data-no-page]").hidden = true;
}
