// A file that the host did not compress on its way, from the twin beside it that was compressed at build.
// The service worker has this too: the build puts it there.

const GZIP = [0x1f, 0x8b]; // how such bytes begin
const SILENCE_ALLOWED = 30_000; // ms

/** A fetch that fails once nothing has come for long: some networks keep a connection and send nothing. */
export async function fetchUnlessSilent(address, { signal, ...options } = {}) {
  signal?.throwIfAborted();
  const giveUp = new AbortController();
  signal?.addEventListener("abort", () => giveUp.abort(signal.reason));
  let timer;
  const expectSign = () => {
    clearTimeout(timer);
    timer = setTimeout(() => giveUp.abort(new DOMException("nothing came", "TimeoutError")), SILENCE_ALLOWED);
  };
  expectSign();
  try {
    const response = await fetch(address, { ...options, signal: giveUp.signal });
    const watched = response.body?.pipeThrough(new TransformStream({
      transform(chunk, stream) {
        expectSign();
        stream.enqueue(chunk);
      },
      flush: () => clearTimeout(timer),
    }));
    return new Response(watched, response);
  } catch (error) {
    clearTimeout(timer);
    throw error;
  }
}

/** Whether the twin is the shorter way to what this response begins to bring. */
export function isUncompressed(response) {
  return "DecompressionStream" in globalThis && !response.headers.has("content-encoding");
}

/* The bytes of the file at an address, or undefined when the host has no twin of it. `onPart` gets how much of the twin
   came each time, from 0 to 1, where the host tells its length. */
export async function bytesOfTwin(address, options, onPart = () => {}) {
  const response = await fetchUnlessSilent(`${address}.gz`, options);
  if (!response.ok) return undefined;
  const length = Number(response.headers.get("content-length"));
  const counted = response.body.pipeThrough(new TransformStream({
    transform(chunk, stream) {
      onPart(length ? chunk.byteLength / length : 0);
      stream.enqueue(chunk);
    },
  }));
  const bytes = new Uint8Array(await new Response(counted).arrayBuffer());
  // Some hosts tell a browser to unpack a file of this name by itself.
  if (!GZIP.every((byte, at) => bytes[at] === byte)) return bytes.buffer;
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(unpacked).arrayBuffer();
}

/** The hash of bytes as a browser's `integrity` option takes it. */
export async function integrityOf(bytes) {
  const digest = await crypto.subtle.digest("SHA-256", bytes);
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}
