// A link to a folded part finds it open.

export function openTarget() {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const fold = target?.closest("details");
  if (!fold || fold.open) return;
  fold.open = true;
  target.scrollIntoView();
}
