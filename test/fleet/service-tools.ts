import { randomUUID } from 'node:crypto';
import type { ServiceStep } from '../../shared/record/service-step.js';
import { type Consequence, NOTHING_KNOWN } from '../../shared/record/weigh-consequence.js';
import type { ShownService } from '../../src/server/fleet/service-book.js';
import { actorOf, addCraft, bodyOf, type FleetServer, type Who } from './fleet-server.js';

export const NO_HARM: Consequence = {
  ...NOTHING_KNOWN,
  ...{ died: 'no', missing: 'no', beyondFirstAid: 'no', hurt: 'no' },
  damage: { lowCents: 10_000, highCents: 20_000 },
};
export const DEATH: Consequence = { ...NO_HARM, died: 'yes' };
export const CLEARED = { kind: 'cleared', by: 'insurer', person: 'R. Vale', how: 'by mail' };

export interface StepPage {
  items: {
    sequence: number;
    at: string;
    recordedAt: string;
    person: string;
    device: string;
    step: ServiceStep;
  }[];
  next: string | null;
}

/** What the tests of service do with a server that is running by then. */
export function serviceTools(running: () => FleetServer) {
  return {
    step: (craft: string, sent: object, who: Who = 'staff', key?: string) =>
      running().post(`/api/craft/${craft}/service-steps`, sent, who, key),
    serviceOf: async (craft: string, who: Who = 'staff') =>
      bodyOf<ShownService>(await running().get(`/api/craft/${craft}/service`, who).expect(200)),
    stepsOf: async (craft: string) =>
      bodyOf<StepPage>(await running().get(`/api/craft/${craft}/service-steps?limit=100`).expect(200)).items,
    /** A craft that an incident keeps in, with what came of it. */
    aHeldCraft: async (consequence?: Consequence) => {
      const { fleet } = running();
      const { id: craft, ...rest } = await addCraft(running());
      const incident = randomUUID();
      await fleet.takeOut({ craft, incident, reason: 'Call 2026-0042' }, actorOf('device'));
      if (consequence) await fleet.tellConsequence({ incident, consequence }, actorOf('staff'));
      return { craft, incident, unitName: String(rest['unitName']) };
    },
  };
}

export const codesOf = (answer: { body: unknown }): string[] =>
  (answer.body as { errors: { code: string }[] }).errors.map(({ code }) => code);
