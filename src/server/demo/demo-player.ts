import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { DemoIncident, DoneStep, PictureStep, RequestStep, SignStep, Step } from './demo-story.js';
import { type Answer, DemoVisitor } from './demo-visitor.js';
import { drawPicture } from './draw-picture.js';
import { fillIn, fillInText, type Known, momentOf } from './fill-in.js';

/** The clock of a service that is being filled: it says what it is told. */
export interface DemoClock {
  set(milliseconds: number): void;
}

const BETWEEN_STEPS_MS = 1000;
const OCTETS = 'application/offset+octet-stream';

/** Plays the steps of the demonstration, each at its own time and by its own person, through the API. */
export class DemoPlayer {
  private readonly ids = new Map<string, string>();
  private readonly visitors = new Map<string, DemoVisitor>();
  private readonly known: Known;
  private clockAt = Number.NEGATIVE_INFINITY;
  private pictures = 0;

  constructor(
    private readonly app: NestFastifyApplication,
    private readonly clock: DemoClock,
    { now, timeZone }: { now: string; timeZone: string },
  ) {
    this.known = { ids: this.ids, now, timeZone };
  }

  /** Somebody who can do steps from now on. */
  admit(signInName: string, accountId: string, password: string): DemoVisitor {
    const visitor = new DemoVisitor(this.app, signInName, password);
    this.visitors.set(signInName, visitor);
    this.ids.set(`person ${signInName}`, accountId);
    return visitor;
  }

  /** Puts the clock of the service to a moment of the story, and never back. */
  moveTo(when: string): number {
    const moment = momentOf(when, this.known).epochMilliseconds;
    this.clockAt = Math.max(moment, this.clockAt + BETWEEN_STEPS_MS);
    this.clock.set(this.clockAt);
    return this.clockAt;
  }

  /** Steps of several incidents in the order of their times; those of one stay in the order in which they are told. */
  inOrder(incidents: readonly DemoIncident[]): Step[] {
    const timed = incidents.flatMap(({ steps }) => {
      let latest = Number.NEGATIVE_INFINITY;
      return steps.map((step) => {
        latest = Math.max(latest, momentOf(step.when, this.known).epochMilliseconds);
        return { step, at: latest };
      });
    });
    return timed.sort((a, b) => a.at - b.at).map(({ step }) => step);
  }

  async play(step: Step): Promise<void> {
    const visitor = this.visitors.get(step.who);
    if (visitor === undefined) throw new Error(`The demonstration has nobody called "${step.who}".`);
    await visitor.arrive(this.moveTo(step.when));
    if ('send' in step) await this.request(visitor, step);
    else if ('sign' in step) await this.sign(visitor, step);
    else if ('done' in step) await this.complete(visitor, step);
    else await this.takePicture(visitor, step);
  }

  private async request(visitor: DemoVisitor, step: RequestStep): Promise<void> {
    const url = fillInText(step.to, this.known);
    const body = fillIn(step.body, this.known);
    const answer =
      step.send === 'POST' ? await visitor.create(url, body) : await this.change(visitor, url, body);
    if (step.as !== undefined) this.ids.set(step.as, answer.id);
  }

  /** The version that is changed is that of what is read at the address; the status is one of its incident. */
  private async change(visitor: DemoVisitor, url: string, body: unknown): Promise<Answer> {
    const { version } = await visitor.get(url.replace(/\/status$/, ''));
    return version === undefined ? visitor.put(url, body) : visitor.change('PUT', url, version, body);
  }

  private async sign(visitor: DemoVisitor, { sign: kind, of, duties, words }: SignStep): Promise<void> {
    const incident = fillInText(`/api/incidents/{${of}}`, this.known);
    const { items, determination } = (await visitor.get(`${incident}/duties`)) as unknown as DutyList;
    for (const { duty, vessel, decision, filings } of items) {
      if (decision !== null || filings.length > 0) continue;
      if (duties !== undefined && !duties.some((start) => duty.startsWith(start))) continue;
      const key = { duty, ...(vessel !== null && { vessel }) };
      const signing = { ...(fillIn(words ?? {}, this.known) as object), kind, determination, ...key };
      await visitor.create(`${incident}/decisions`, signing);
    }
  }

  private async complete(visitor: DemoVisitor, { done, of, evidence }: DoneStep): Promise<void> {
    const incident = fillInText(`/api/incidents/{${of}}`, this.known);
    const { items } = (await visitor.get(`${incident}/tasks`)) as unknown as TaskList;
    const open = items.filter(({ state }) => state === 'open');
    const missing =
      done === 'all' ? [] : done.filter((name) => !open.some(({ template }) => template === name));
    if (missing.length > 0)
      throw new Error(`The demonstration finishes what is not open in ${of}: ${missing.join(', ')}.`);
    for (const { id, template, version } of open) {
      if (done !== 'all' && !done.includes(template)) continue;
      const url = `${incident}/tasks/${id}/completion`;
      await visitor.change('POST', url, version, { evidence: fillInText(evidence, this.known) });
    }
  }

  private async takePicture(visitor: DemoVisitor, { picture, of, name, about }: PictureStep): Promise<void> {
    const uploads = fillInText(`/api/incidents/{${of}}/evidence/uploads`, this.known);
    const bytes = await drawPicture((this.pictures += 1));
    const words = {
      caption: `${picture} (a drawing in place of the photograph)`,
      ...(fillIn(about ?? {}, this.known) as object),
    };
    const { id } = await visitor.create(uploads, { size: bytes.length, name, about: words });
    await visitor.patch(`${uploads}/${id}`, bytes, { 'content-type': OCTETS, 'upload-offset': '0' });
    await visitor.post(`${uploads}/${id}/finish`);
  }
}

interface DutyList {
  readonly determination: number;
  readonly items: readonly {
    duty: string;
    vessel: string | null;
    decision: object | null;
    filings: readonly object[];
  }[];
}

interface TaskList {
  readonly items: readonly { id: string; template: string; state: string; version: number }[];
}
