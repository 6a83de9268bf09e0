// A link to a folded part finds it open.

export function openTarget() {
  const target = document.getElementById(anchorOf(location.hash));
  const fold = target?.closest("details");
  if (!fold || fold.open) return;
  fold.open = true;
  target.scrollIntoView();
}

/** The anchor that a link names; one whose signs are no text stands as it came, and leads nowhere. */
export function anchorOf(hash) {
  const written = hash.slice(1);
  try {
    return decodeURIComponent(written);
  } catch {
    return written;
  }
}
