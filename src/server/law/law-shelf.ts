import { createHash } from 'node:crypto';
import { type DuePack, listDuePacks } from '../../../shared/law/list-due-packs.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';

/** A document as it is sent, with the mark by which a browser asks whether it has changed. */
export interface Sheet {
  readonly text: string;
  /** RFC 9110 entity tag, quoted. */
  readonly etag: string;
}

/** The law in force as documents to be handed out: each pack whole, and the list of them. */
export class LawShelf {
  readonly list: Sheet;
  /** Every pack whole, for a browser that is to determine without signal. */
  readonly all: Sheet;
  private readonly packs: ReadonlyMap<string, Sheet>;

  constructor(
    private readonly packsInForce: readonly RulePack[],
    private readonly recheckMonths: number,
  ) {
    const packs = packsInForce;
    this.packs = new Map(packs.map((pack) => [packCode(pack), sheetOf(pack)]));
    this.list = sheetOf(packs.map(summary));
    this.all = sheetOf(packs);
  }

  /** What is due to be read again on a day. */
  due(today: string): DuePack[] {
    return listDuePacks(this.packsInForce, today, this.recheckMonths);
  }

  /** The pack of a code, in capitals or not. */
  pack(code: string): Sheet | undefined {
    return this.packs.get(code.toUpperCase());
  }
}

function summary(pack: RulePack): object {
  const { jurisdiction, subject, name, agency, basis, asOf, readOn, effectiveFrom } = pack;
  const href = `/api/law/${packCode(pack)}`;
  return {
    jurisdiction,
    ...(subject !== undefined && { subject }),
    name,
    agency,
    basis,
    asOf,
    readOn,
    effectiveFrom,
    href,
  };
}

function sheetOf(document: object): Sheet {
  const text = JSON.stringify(document);
  return { text, etag: `"${createHash('sha256').update(text).digest('base64url')}"` };
}
