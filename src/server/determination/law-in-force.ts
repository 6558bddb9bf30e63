import type { Determination } from '../../../shared/determination/determination.js';
import { packCode } from '../../../shared/law/pack-code.js';
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
    this.versions = new Map(packs.map((pack) => [packCode(pack), packVersion(pack)]));
    this.digest = digestOf([...this.versions.values()]);
  }

  /** The texts that a determination rests on: while nobody knows the state, those of all. */
  versionsFor({ duties, states }: Pick<Determination, 'duties' | 'states'>): PackVersion[] {
    const all = [...this.versions.values()];
    const others = new Set(duties.flatMap(({ pack }) => pack ?? []));
    // A duty names `us-md` what its pack calls `MD`.
    const ofDuties = duties.map(({ jurisdiction }) => jurisdiction.slice(-2).toUpperCase());
    const used = new Set(['US', ...states.map(({ state }) => state), ...ofDuties]);
    const everywhere = duties.some(({ jurisdiction }) => jurisdiction === 'state');
    return all.filter((version) =>
      version.subject === undefined
        ? everywhere || used.has(version.jurisdiction)
        : others.has(packCode(version)),
    );
  }

  /** Whether these are still the texts in force. */
  isCurrent(used: readonly PackVersion[]): boolean {
    return used.every((version) => this.versions.get(packCode(version))?.sha256 === version.sha256);
  }
}
