// The situation that is answered stands out among those at a glance.

export function startGlance(glance, signal) {
  const beside = glance.dataset.glance.split(" "); // what a link says beside its case
  const rows = [...glance.querySelectorAll("[data-case]")];
  const show = (query) => {
    const asked = caseOf(query, beside);
    for (const row of rows) {
      if (query && caseOf(row.dataset.case, beside) === asked) row.setAttribute("aria-current", "true");
      else row.removeAttribute("aria-current");
    }
  };
  document.addEventListener("calculator:answered", ({ detail }) => show(detail.query), { signal });
  document.addEventListener("reset", () => show(""), { signal });
}

function caseOf(query, beside) {
  const inputs = new URLSearchParams(query);
  for (const name of beside) inputs.delete(name);
  inputs.sort();
  return inputs.toString();
}
