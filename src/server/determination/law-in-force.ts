import type { Determination } from '../../../shared/determination/determination.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import type { Geography } from '../../../shared/place/geography.js';
import { digestOf, packVersion, type PackVersion } from './pack-version.js';

/** What determinations are made with; handed in when the service is put together. */
export class Law {
  /** Changes with any pack. */
  readonly digest: string;
  private readonly versions: ReadonlyMap<string, PackVersion>;

  constructor(
    readonly packs: readonly RulePack[],
    readonly geography: Geography,
  ) {
    this.versions = new Map(packs.map((pack) => [pack.jurisdiction, packVersion(pack)]));
    this.digest = digestOf([...this.versions.values()]);
  }

  /** The texts that a determination rests on: while nobody knows the state, those of all. */
  versionsFor({ duties, states }: Pick<Determination, 'duties' | 'states'>): PackVersion[] {
    const all = [...this.versions.values()];
    if (duties.some(({ jurisdiction }) => jurisdiction === 'state')) return all;
    // A duty names `us-md` what its pack calls `MD`.
    const ofDuties = duties.map(({ jurisdiction }) => jurisdiction.slice(-2).toUpperCase());
    const used = new Set(['US', ...states.map(({ state }) => state), ...ofDuties]);
    return all.filter(({ jurisdiction }) => used.has(jurisdiction));
  }

  /** Whether these are still the texts in force. */
  isCurrent(used: readonly PackVersion[]): boolean {
    return used.every(({ jurisdiction, sha256 }) => this.versions.get(jurisdiction)?.sha256 === sha256);
  }
}
