import type { Actor } from '../accounts/accounts.api.js';
import { refuse } from '../platform/http/refuse.js';
import type { ServiceSection, ServiceSections } from '../record/record.api.js';

interface Thing {
  readonly id: string;
  readonly version: number;
}

/** A list of things in a section that the service writes itself; what is written here is written within `run`. */
export class KeptList<T extends Thing> {
  constructor(
    private readonly sections: ServiceSections,
    private readonly section: ServiceSection,
    /** Member of the section that holds the list. */
    private readonly member: 'files' | 'items',
  ) {}

  run<R>(work: () => Promise<R>): Promise<R> {
    return this.sections.run(work);
  }

  /** @param at as of which moment (RFC 3339), without what was withdrawn since; now, where none is given */
  async all(incidentId: string, at?: string): Promise<T[]> {
    const document = await this.sections.read<Record<string, T[]>>(incidentId, this.section, at);
    return document[this.member] ?? [];
  }

  async find(incidentId: string, id: string): Promise<T | undefined> {
    return (await this.all(incidentId)).find((thing) => thing.id === id);
  }

  /** @throws ProblemException 404 */
  async get(incidentId: string, id: string): Promise<T> {
    return (await this.find(incidentId, id)) ?? refuse(404, 'There is nothing at this address.');
  }

  async add(incidentId: string, thing: T, actor: Actor): Promise<void> {
    await this.write(incidentId, [...(await this.all(incidentId)), thing], actor);
  }

  /** Puts the next version in the place of the present one. */
  async replace(incidentId: string, thing: T, actor: Actor, reason?: string): Promise<T> {
    const next = { ...thing, version: thing.version + 1 };
    const things = (await this.all(incidentId)).map((one) => (one.id === next.id ? next : one));
    await this.write(incidentId, things, actor, reason);
    return next;
  }

  /** The next version, without some members of it, which go out of the earlier ones too. */
  async withdraw(
    incidentId: string,
    thing: T,
    members: readonly string[],
    actor: Actor,
    reason: string,
  ): Promise<T> {
    const next = { ...thing, version: thing.version + 1 };
    const things = (await this.all(incidentId)).map((one) => (one.id === next.id ? next : one));
    const paths = members.map((member) => `/${this.member}/${next.id}/${member}`);
    const left = { document: { [this.member]: things }, paths };
    await this.sections.withdraw(incidentId, this.section, left, actor, reason);
    return next;
  }

  private write(incidentId: string, things: readonly T[], actor: Actor, reason?: string): Promise<void> {
    return this.sections.write(incidentId, this.section, { [this.member]: things }, actor, reason);
  }
}
