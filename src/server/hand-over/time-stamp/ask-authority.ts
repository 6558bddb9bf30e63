import { randomBytes } from 'node:crypto';
import { fromBER, Integer, OctetString, Sequence } from 'asn1js';
import { AlgorithmIdentifier, ContentInfo, MessageImprint, SignedData, TimeStampReq, TSTInfo } from 'pkijs';

/** However slow the authority, a packet waits no longer for it. */
const LONGEST_MS = 10_000;
/** A token with its certificates is a few kilobytes. */
const LONGEST_BYTES = 64 * 1024;
const SHA_256 = '2.16.840.1.101.3.4.2.1';
const REPLY_TYPE = 'application/timestamp-reply';

/** What came of it: a token in DER, or why there is none. */
export type Answer =
  { readonly token: Buffer } | { readonly why: 'no-answer' | 'refused' | 'unfit'; readonly words: string };

/**
 * Asks a time-stamping authority for a token over a hash (RFC 3161, 2.4.1 and 3.4). It goes to no other host than the one
 * that was named, and whatever happens there comes back as a value.
 * @param sha256 of what is to be stamped; nothing else of it leaves
 */
export async function askAuthority(url: string, sha256: Uint8Array): Promise<Answer> {
  // Positive, and without a leading zero that DER would drop.
  const nonce = Buffer.concat([Buffer.of(0x01), randomBytes(8)]);
  const reply = await fetchReply(url, requestFor(sha256, nonce));
  if (!Buffer.isBuffer(reply)) return reply;
  try {
    return readReply(reply, nonce);
  } catch (error) {
    return { why: 'unfit', words: wordsOf(error) };
  }
}

function requestFor(sha256: Uint8Array, nonce: Uint8Array): ArrayBuffer {
  const messageImprint = new MessageImprint({
    hashAlgorithm: new AlgorithmIdentifier({ algorithmId: SHA_256 }),
    hashedMessage: new OctetString({ valueHex: new Uint8Array(sha256).buffer }),
  });
  const valueHex = new Uint8Array(nonce).buffer;
  return new TimeStampReq({ version: 1, messageImprint, nonce: new Integer({ valueHex }), certReq: true })
    .toSchema()
    .toBER();
}

async function fetchReply(url: string, body: ArrayBuffer): Promise<Buffer | Answer> {
  try {
    const response = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/timestamp-query', accept: REPLY_TYPE },
      body,
      redirect: 'error',
      signal: AbortSignal.timeout(LONGEST_MS),
    });
    const type = response.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
    if (response.status !== 200 || type !== REPLY_TYPE) {
      await response.body?.cancel();
      return {
        why: 'no-answer',
        words: `It answered with status ${response.status} and ${type ?? 'no type'}.`,
      };
    }
    const pieces: Uint8Array[] = [];
    let size = 0;
    for await (const piece of response.body ?? []) {
      size += piece.length;
      // Leaving the loop lets go of the connection.
      if (size > LONGEST_BYTES) return { why: 'unfit', words: `It sent more than ${LONGEST_BYTES} bytes.` };
      pieces.push(piece);
    }
    return Buffer.concat(pieces);
  } catch (error) {
    return { why: 'no-answer', words: wordsOf(error) };
  }
}

/** The token byte for byte as it came: put together anew, its signature might not fit. */
function readReply(reply: Buffer, nonce: Buffer): Answer {
  const { offset, result } = fromBER(new Uint8Array(reply));
  const [status, token] = result instanceof Sequence ? result.valueBlock.value : [];
  const [code] = status instanceof Sequence ? status.valueBlock.value : [];
  if (offset !== reply.length || !(code instanceof Integer))
    return { why: 'unfit', words: 'It is no reply.' };
  const granted = code.valueBlock.valueDec;
  // 0 granted, 1 granted with modifications (RFC 3161, 2.4.2).
  if (granted !== 0 && granted !== 1) return { why: 'refused', words: `Status ${granted}.` };
  if (!(token instanceof Sequence)) return { why: 'unfit', words: 'There is no token in it.' };
  const der = Buffer.from(token.valueBeforeDecodeView);
  const { encapContentInfo } = new SignedData({ schema: ContentInfo.fromBER(new Uint8Array(der)).content });
  if (encapContentInfo.eContent === undefined) return { why: 'unfit', words: 'The token says nothing.' };
  const said = TSTInfo.fromBER(encapContentInfo.eContent.getValue()).nonce?.valueBlock.valueHexView;
  if (said === undefined || !nonce.equals(said))
    return { why: 'unfit', words: 'It answers another question.' };
  return { token: der };
}

function wordsOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.cause instanceof Error ? `${error.message}: ${error.cause.message}` : error.message;
}
