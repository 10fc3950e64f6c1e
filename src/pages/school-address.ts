import { type Checked, compactOf, fromCompact, type School } from "../cells/school/index.ts";

/** The part of an address that hands a school on: '#school=1.…'. */
const PART = "#school=";
/** An address no honest school needs, and text no honest address unpacks to. */
const LONGEST_ADDRESS = 20_000;
const LONGEST_TEXT = 40_000;

/** Packed, or plain where the browser has no means to pack. */
type Form = "1" | "0";

/** The hash that hands a school on, in about a thousand characters. */
export async function hashOf(school: School): Promise<string> {
  const plain = new TextEncoder().encode(compactOf(school));
  const canPack = typeof CompressionStream !== "undefined";
  const bytes = canPack ? await through(plain, new CompressionStream("deflate-raw")) : plain;
  const form: Form = canPack ? "1" : "0";
  return `${PART}${form}.${base64url(bytes)}`;
}

/** The school that a hash hands on, or what is wrong with it; undefined where the hash is none of that kind. */
export async function schoolOfHash(hash: string): Promise<Checked | undefined> {
  if (!hash.startsWith(PART)) return undefined;
  const found = /^([01])\.([\w-]+)$/.exec(hash.slice(PART.length, LONGEST_ADDRESS));
  try {
    return fromCompact(found ? await textOf(found[1] as Form, found[2]!) : "");
  } catch {
    return fromCompact("");
  }
}

async function textOf(form: Form, encoded: string): Promise<string> {
  const bytes = Uint8Array.from(atob(encoded.replaceAll("-", "+").replaceAll("_", "/")), (sign) => sign.charCodeAt(0));
  return new TextDecoder().decode(form === "1" ? await through(bytes, new DecompressionStream("deflate-raw")) : bytes);
}

function base64url(bytes: Uint8Array): string {
  const signs = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(signs).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** @throws where the bytes are damaged, or come to more than any school needs */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array> {
  const chunks: number[] = [];
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    for (const byte of next.value) chunks.push(byte);
    if (chunks.length > LONGEST_TEXT) throw new RangeError("too long");
  }
  return Uint8Array.from(chunks);
}
