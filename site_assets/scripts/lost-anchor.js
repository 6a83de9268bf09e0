// A link to a part that this page never had is told so: every part it had keeps its anchor.

import { anchorOf } from "./fold.js";

export function tellLostAnchor() {
  document.querySelector("[data-anchor-told]")?.remove();
  const anchor = anchorOf(location.hash);
  const words = document.querySelector("template[data-lost-anchor]");
  if (!anchor || !words || document.getElementById(anchor) || document.getElementsByName(anchor).length) return;
  const told = document.createElement("div");
  told.className = "unanswered";
  told.dataset.anchorTold = "";
  told.setAttribute("role", "status");
  told.append(document.importNode(words.content, true));
  told.querySelector("span").textContent = anchor;
  words.after(told);
}
