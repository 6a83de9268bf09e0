// Which pages a query finds, and what of them, from the index that the build made (site_assets/build/search_index.py).
// It knows words and weights and touches no page.

// As site_assets/build/search_words.py takes a text apart.
const WORD = /\d[a-z0-9]*(?:[./]\d[a-z0-9]*|\([a-z0-9]{1,4}\))*|[a-z][a-z0-9]*(?:['’][a-z]+)*/g;
// How much a word of a page counts for a word of the query: 1 is the word itself.
const PLURAL = 0.95;
const STEM = 0.5; // no more: grounded and grounding are one stem and two things
const OTHER_WORD = 0.9; // says the same, perhaps in Spanish
const PART_OF_SECTION = 0.9; // 250.28(D)(1) for 250.28
const BEGINNING = 0.3; // and up to 0.25 more, the more of the word is there
const ONE_LETTER_OFF = 0.6;
const TWO_LETTERS_OFF = 0.4;
const CUT = 0.7; // of 250.28(D)(1) only 250.28(D) is there
const NAME = 12; // what a whole name of a page counts beside the weights of its words
const SENSE = 0.55; // a word as near as this is said, so that one of its stem is not
const SUGGESTED = 4;

export function wordsOf(text) {
  const plain = text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return (plain.match(WORD) ?? []).map((word) => word.replace(/['’]/g, ""));
}

/** The index with what is worked out of it once. */
export function prepared(index) {
  const said = [...index.slang, ...index.notCovered].flatMap((each) => each.said.flat());
  const vocabulary = [...new Set([...Object.keys(index.words), ...Object.keys(index.same), ...said])];
  const singulars = new Map(vocabulary.map((word) => [word, singularOf(word)]));
  const stems = new Map(vocabulary.map((word) => [word, stemOf(word)]));
  const rarity = new Map(vocabulary.map((word) => {
    const having = (index.words[word]?.length ?? 2) / 2;
    return [word, Math.log(1 + index.pages.length / having)];
  }));
  const quiet = new Set(index.quiet);
  const names = index.names.map(([words, page, anchor]) => {
    const all = words.split(" ");
    const telling = all.filter((word) => !quiet.has(word));
    return { words: telling.length ? telling : all, page, anchor };
  });
  const inNames = new Set(names.flatMap(({ words }) => words));
  const sets = { quiet, inNames, beside: new Set(index.beside), amps: new Set(index.amps) };
  return { ...index, ...sets, vocabulary, singulars, stems, rarity, names };
}

/** What a query finds: pages, best first and `most` of them, the senses of a name, what is not covered, and words near to an unknown one. */
export function find(index, typed, most = Infinity) {
  const all = wordsOf(typed);
  const telling = all.filter((word) => !index.quiet.has(word) && (word.length > 1 || /\d/.test(word)));
  const asked = [...new Set(telling.length ? telling : all)].map((word) => meanings(index, word));
  const known = asked.filter(({ near }) => near.size);
  const pages = ranked(index, known);
  return {
    count: pages.length,
    pages: pages.slice(0, most).map(({ number, anchor }) => shown(index, number, anchor, known)),
    slang: index.slang.find(({ said }) => isAskedFor(index, said, asked)),
    notCovered: index.notCovered.find(({ said }) => said.some((words) => words.every((word) => isSaid(known, word)))),
    amps: ampsIn(index, all),
    nearest: pages.length ? [] : nearest(index, asked),
    marked: new Set(known.flatMap(({ near }) => [...near.keys()])),
  };
}

/** The words of the index that a word of the query may stand for, each with how near it is. */
function meanings(index, word) {
  const near = new Map();
  const add = (other, nearness) => { if (nearness > (near.get(other) ?? 0)) near.set(other, nearness); };
  const singular = singularOf(word);
  const stem = stemOf(word);
  for (const other of index.vocabulary) {
    if (other === word) add(other, 1);
    else if (index.singulars.get(other) === singular) add(other, PLURAL);
    else if (index.stems.get(other) === stem) add(other, STEM);
    else if (other.startsWith(`${word}(`)) add(other, PART_OF_SECTION);
    else if (begins(other, word)) add(other, BEGINNING + 0.25 * word.length / other.length);
  }
  const isKnown = index.stems.get(word) !== undefined || [...near].some(([other]) => index.stems.get(other) === stem);
  if (!near.size && word.includes("(")) {
    for (const [other, nearness] of meanings(index, word.slice(0, word.lastIndexOf("("))).near) add(other, CUT * nearness);
  } else if (!isKnown) addMisspelt(index, word, add);
  for (const [other, nearness] of [...near]) {
    for (const same of nearness >= ONE_LETTER_OFF ? index.same[other] ?? [] : []) add(same, OTHER_WORD * nearness);
  }
  return { word, near, rarity: Math.max(0, ...[...near].map(([other, nearness]) => nearness * index.rarity.get(other))) };
}

function addMisspelt(index, word, add) {
  if (word.length < 4 || /\d/.test(word)) return;
  const most = word.length < 8 ? 1 : 2;
  for (const other of index.vocabulary) {
    if (/\d/.test(other)) continue;
    const off = distance(word, other, most);
    if (off <= most) add(other, off === 1 ? ONE_LETTER_OFF : TWO_LETTERS_OFF);
  }
}

/** Whether a word begins with another; a number ends where its digits end, so 250.6 does not begin 250.66. */
function begins(word, beginning) {
  if (beginning.length < 2 || !word.startsWith(beginning)) return false;
  return !(/\d$/.test(beginning) && /\d/.test(word[beginning.length]));
}

function ranked(index, known) {
  const wanted = sum(known.map(({ rarity }) => rarity));
  const found = new Map(); // page -> { score, met, name, anchor }
  const of = (number) => {
    if (!found.has(number)) found.set(number, { number, score: 0, met: 0, name: 0 });
    return found.get(number);
  };
  for (const { near, rarity } of known) {
    const best = new Map();
    for (const [word, nearness] of near) {
      const weights = index.words[word] ?? [];
      for (let at = 0; at < weights.length; at += 2) {
        best.set(weights[at], Math.max(best.get(weights[at]) ?? 0, nearness * weights[at + 1] / 10));
      }
    }
    for (const [number, weight] of best) {
      const page = of(number);
      page.score += weight;
      page.met += rarity;
    }
  }
  for (const { words, page: number, anchor } of index.names) {
    const worth = worthOfName(index, words, known, wanted);
    const page = worth && of(number);
    if (page && worth > page.name) Object.assign(page, { name: worth, anchor });
  }
  const scored = [...found.values()].map((page) => ({
    ...page,
    score: index.pages[page.number].boost * (page.score * page.met / wanted + NAME * page.name),
  }));
  return scored.sort((one, other) => other.score - one.score);
}

/** How much of the query a whole name is: nothing where a word of the name is not asked for. */
function worthOfName(index, words, known, wanted) {
  const used = new Set();
  let worth = 0;
  for (const word of words) {
    let best;
    for (const asked of known) {
      const nearness = asked.near.get(word) ?? 0;
      if (nearness > (best?.near.get(word) ?? 0)) best = asked;
    }
    if (!best) return 0;
    used.add(best);
    worth += best.near.get(word) * index.rarity.get(word);
  }
  return worth * sum([...used].map(({ rarity }) => rarity)) / wanted;
}

/** One page as it is shown: with the heading that says most of the query, where there is one. */
function shown(index, number, anchor, known) {
  const page = index.pages[number];
  const rarityOf = (words) => sum(known.map(({ near, rarity }) => {
    const best = Math.max(0, ...wordsOf(words).map((word) => near.get(word) ?? 0));
    return best >= SENSE ? best * rarity : 0;
  }));
  const named = page.headings?.find(([each]) => each === anchor);
  if (named) return { ...page, heading: named };
  const inTitle = rarityOf(page.title);
  let best = { worth: inTitle };
  for (const heading of page.headings ?? []) {
    const worth = rarityOf(heading[1]);
    if (worth > best.worth) best = { worth, heading };
  }
  return { ...page, heading: best.heading };
}

/** Whether one of the names is asked for and, beside sizes and the like, nothing else. */
function isAskedFor(index, said, asked) {
  return said.some((words) => {
    const telling = words.filter((word) => !index.quiet.has(word));
    if (!telling.every((word) => isSaid(asked, word))) return false;
    return asked.every(({ word, near }) => {
      return index.beside.has(word) || /^\d/.test(word) || telling.some((each) => isNear(near, each));
    });
  });
}

function isSaid(asked, word) {
  return asked.some(({ near }) => isNear(near, word));
}

function isNear(near, word) {
  return (near.get(word) ?? 0) >= SENSE;
}

/** The amps in a query, as it writes them: 200 A, 200amp. */
function ampsIn(index, words) {
  for (const [place, word] of words.entries()) {
    const [, number, unit] = word.match(/^(\d+)([a-z]*)$/) ?? [];
    if (number && index.amps.has(unit || words[place + 1])) return number;
  }
  return undefined;
}

/** The queries that one would find something with, where a word of this one is in no page. */
function nearest(index, asked) {
  const words = asked.filter(({ near }) => !near.size).flatMap(({ word }) => {
    const most = Math.max(2, Math.floor(word.length / 3));
    return [...index.inNames]
      .filter((other) => other in index.words && !/\d/.test(other) && !index.quiet.has(other) && other.length > 3)
      .map((other) => ({ other, off: distance(word, other, most) }))
      .filter(({ off }) => off <= most)
      .sort((one, next) => one.off - next.off || index.words[next.other].length - index.words[one.other].length);
  });
  return [...new Set(words.map(({ other }) => other))].slice(0, SUGGESTED);
}

/** How many letters are wrong, left out, added or changed about, or more than `most`. */
function distance(one, other, most) {
  if (Math.abs(one.length - other.length) > most) return most + 1;
  let before = [];
  let last = Array.from({ length: other.length + 1 }, (_, place) => place);
  for (let row = 1; row <= one.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const differs = one[row - 1] === other[column - 1] ? 0 : 1;
      now[column] = Math.min(last[column] + 1, now[column - 1] + 1, last[column - 1] + differs);
      const isChangedAbout = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      if (row > 1 && column > 1 && isChangedAbout) now[column] = Math.min(now[column], before[column - 2] + 1);
    }
    if (Math.min(...now) > most) return most + 1;
    [before, last] = [last, now];
  }
  return last[other.length];
}

function singularOf(word) {
  if (word.length < 4 || !/[^su]s$/.test(word) || /\d/.test(word)) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  return /(?:[sx]|[cs]h)es$/.test(word) ? word.slice(0, -2) : word.slice(0, -1);
}

/** A word without its endings: tingling, tingles and tingle are one. */
function stemOf(word) {
  if (/\d/.test(word)) return word;
  let stem = singularOf(word);
  if (stem.length > 5 && stem.endsWith("ing")) stem = stem.slice(0, -3);
  else if (stem.length > 4 && stem.endsWith("ed")) stem = stem.slice(0, -2);
  if (/([bdglmnprt])\1$/.test(stem) && stem !== word) stem = stem.slice(0, -1);
  if (stem.length > 3 && stem.endsWith("e")) stem = stem.slice(0, -1);
  if (stem.length > 3 && stem.endsWith("y")) stem = `${stem.slice(0, -1)}i`;
  return stem;
}

function sum(numbers) {
  return numbers.reduce((total, each) => total + each, 0);
}
