// Python imports from one archive; it comes in parts, so that a change in one part leaves the others as they are kept.

const END = 22; // bytes of the record that ends an archive without a comment
const ENTRY = 46; // bytes of an entry in the list of files before its name
const MOST_ENTRIES = 0xffff;

/** One stored archive out of several (Uint8Array): their files one after the other, then one list of them all. */
export function joinedArchives(archives) {
  const contents = [];
  const lists = [];
  let size = 0;
  let entries = 0;
  for (const archive of archives) {
    const end = viewOf(archive.subarray(archive.length - END));
    const [count, length, start] = [end.getUint16(10, true), end.getUint32(12, true), end.getUint32(16, true)];
    contents.push(archive.subarray(0, start));
    lists.push(movedBy(size, archive.slice(start, start + length)));
    size += start;
    entries += count;
  }
  if (entries >= MOST_ENTRIES) throw new RangeError("more files than an archive takes");
  return concatenated([...contents, ...lists, endOf(entries, sum(lists), size)]);
}

/** The list of an archive whose files stand so many bytes later. */
function movedBy(distance, list) {
  const view = viewOf(list);
  for (let at = 0; at < list.length;) {
    view.setUint32(at + 42, view.getUint32(at + 42, true) + distance, true);
    at += ENTRY + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return list;
}

function endOf(entries, length, start) {
  const end = new Uint8Array(END);
  const view = viewOf(end);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, entries, true);
  view.setUint16(10, entries, true);
  view.setUint32(12, length, true);
  view.setUint32(16, start, true);
  return end;
}

function concatenated(parts) {
  const whole = new Uint8Array(sum(parts));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const viewOf = ({ buffer, byteOffset, byteLength }) => new DataView(buffer, byteOffset, byteLength);
const sum = (parts) => parts.reduce((total, { length }) => total + length, 0);
