// What the address of a page asks of its form.

const OF_SEARCH = ["h", "q"]; // the search's own

/** The query that asks something, "" for an address that at most chooses an edition. */
export function linkedQuery(address, form) {
  const isInput = ([name, value]) => !OF_SEARCH.includes(name) && !isTracker(name, form)
    && !(name === "assumed" && value === "edition"); // the edition that is shown while none is picked
  const ours = [...address.searchParams].filter(isInput).map(([name]) => name);
  const choosesEdition = form.dataset.editions.split(" ").includes(address.searchParams.get("edition"));
  return ours.length === 0 || (ours.length === 1 && ours[0] === "edition" && choosesEdition) ? "" : address.search;
}

/** The names in an address that others added to count visits. */
export function ignoredNames(address, form) {
  return [...new Set([...address.searchParams.keys()].filter((name) => isTracker(name, form)))];
}

/** A query in which one name is another, all else as it was. */
export function renamed(query, name, other) {
  const pairs = [...new URLSearchParams(query)].map(([each, value]) => [each === name ? other : each, value]);
  return new URLSearchParams(pairs).toString();
}

function isTracker(name, form) {
  const { trackers, trackerBegins } = form.dataset;
  return trackers.split(" ").includes(name) || name.startsWith(trackerBegins);
}
