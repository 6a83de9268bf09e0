// Shows how far Python has started, in the words that the line carries.

export function showState(line, { state, part = 0 }, retry, reload) {
  line.dataset.state = state;
  line.textContent = line.dataset[state].replace("{percent}", Math.round(part * 100));
  const onward = { late: ["again", retry], failed: ["again", retry], portal: ["again", retry], gone: reload ? ["reload", reload] : ["again", retry] }[state];
  if (!onward) return;
  const [words, press] = onward;
  const button = document.createElement("button");
  button.type = "button";
  button.className = "quiet";
  button.textContent = line.dataset[words];
  button.addEventListener("click", press, { once: true });
  line.append(" ", button);
}
