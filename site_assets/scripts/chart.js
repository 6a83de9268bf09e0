// Draws the charts that Python describes, with uPlot; the list beside each tells the same.

const HEIGHT = 260;
const WIDEST = 620; // what paper holds
const drawn = new Map(); // figure -> chart
let UPlot;

export function startCharts(body, signal) {
  const again = (ink) => { for (const figure of [...drawn.keys()]) forget(figure); return draw(ink); };
  draw();
  // The answer's words are painted first.
  document.addEventListener("calculator:answered", () => requestAnimationFrame(() => setTimeout(draw)), { signal });
  // What was folded or of another edition has no width until it is shown.
  document.addEventListener("toggle", () => draw(), { capture: true, signal });
  document.addEventListener("edition:change", () => draw(), { signal });
  addEventListener("resize", () => again(), { signal });
  addEventListener("beforeprint", () => again("black"), { signal });
  addEventListener("afterprint", () => again(), { signal });
  // The theme tells of light and dark on the body, in an attribute of its own.
  const observer = new MutationObserver(() => again());
  observer.observe(body, { attributes: true });
  signal.addEventListener("abort", () => observer.disconnect());
}

async function draw(ink) {
  for (const figure of [...drawn.keys()]) if (!figure.isConnected) forget(figure);
  const waiting = [...document.querySelectorAll("[data-chart]")].filter((figure) => !drawn.has(figure));
  if (!waiting.length) return;
  UPlot ??= (await import("../charts/uPlot.esm.js")).default;
  for (const figure of waiting) if (figure.isConnected && !drawn.has(figure)) drawOne(figure, ink);
}

function forget(figure) {
  drawn.get(figure)?.destroy();
  drawn.delete(figure);
}

function drawOne(figure, ink) {
  const place = figure.querySelector(".chart-canvas");
  const width = Math.min(place.clientWidth, WIDEST);
  if (!width) return;
  const chart = JSON.parse(figure.dataset.chart);
  const look = getComputedStyle(figure);
  const color = ink ?? look.color;
  const font = `13px ${look.fontFamily}`;
  const axis = { stroke: color, ticks: { stroke: color, width: 1 }, grid: { stroke: color, width: 0.25 }, font, labelFont: font };
  const shared = { width, height: HEIGHT, legend: { show: false }, cursor: { show: false } };
  const [options, data] = chart.kind === "bars" ? bars(chart, axis, color) : lines(chart, axis, color);
  drawn.set(figure, new UPlot({ ...shared, ...options }, data, place));
}

function bars(chart, axis, color) {
  const points = chart.lines[0].points;
  const columns = [points.map(([across]) => across), points.map(([, up]) => up)];
  const most = Math.max(...columns[1], 1) * 1.1;
  return [{
    // Bars lie, so that their names have room on a phone; the first is on top.
    scales: { x: { time: false, ori: 1, dir: -1, range: [-0.6, points.length - 0.4] }, y: { ori: 0, range: [0, most] } },
    series: [{}, { stroke: color, fill: color, paths: UPlot.paths.bars({ size: [0.6, 40] }), points: { show: false } }],
    axes: [
      { ...axis, side: 3, size: 90, grid: { show: false }, splits: () => columns[0], values: (_, splits) => splits.map((at) => chart.names[at]) },
      { ...axis, side: 2, label: chart.up },
    ],
  }, columns];
}

function lines(chart, axis, color) {
  const scale = (each) => ({ time: false, distr: 3, log: 10, range: (_, low, high) => [floor(low), ceil(high)], auto: each });
  const decades = (_, splits) => splits.map((at) => (Number.isInteger(Math.round(Math.log10(at) * 1e9) / 1e9) ? at : null));
  const plain = (_, splits) => splits.map((at) => (at === null ? "" : String(at)));
  const scaled = { ...axis, filter: decades, values: plain, ticks: { ...axis.ticks, filter: decades } };
  const line = ({ words, dash }) => ({ label: words, stroke: color, width: 3, dash, points: { show: false }, facets: FACETS });
  const straight = { time: false, auto: true, range: (_, low, high) => [0, high * 1.05] };
  const logarithmic = chart.kind === "logarithmic";
  const ruled = logarithmic ? scaled : axis;
  return [{
    mode: 2,
    scales: logarithmic ? { x: scale(true), y: scale(true) } : { x: straight, y: straight },
    series: [null, ...chart.lines.map((each) => ({ ...line(each), paths: path }))],
    axes: [
      { ...ruled, label: chart.across },
      { ...ruled, label: chart.up, size: 68 },
    ],
  }, [null, ...chart.lines.map(({ points }) => [points.map(([across]) => across), points.map(([, up]) => up)])]];
}

const FACETS = [{ scale: "x", auto: true }, { scale: "y", auto: true }];
const floor = (value) => 10 ** Math.floor(Math.log10(value));
const ceil = (value) => 10 ** Math.ceil(Math.log10(value));

/* Lines that go straight down or back have no order across, so their way is given point by point. */
function path(plot, index) {
  const [across, up] = plot.data[index];
  const stroke = new Path2D();
  across.forEach((value, at) => stroke.lineTo(plot.valToPos(value, "x", true), plot.valToPos(up[at], "y", true)));
  return { stroke };
}
