import type { ServiceStep } from '../../../shared/record/service-step.js';
import { fleet } from '../words/fleet.js';

const { step: say, service, units } = fleet;

/** What a step says beside its kind, in a line; empty where it says nothing more. */
export function tellStep(step: ServiceStep): string {
  return partsOf(step)
    .filter((part) => part !== null)
    .join('; ');
}

function partsOf(step: ServiceStep): (string | null)[] {
  switch (step.kind) {
    case 'taken-out':
    case 'not-concerned':
    case 'do-not-start':
    case 'start-allowed':
      return [step.reason];
    case 'weighed':
      return [];
    case 'photographed':
      return [photographs(step.photographs)];
    case 'cleared':
      return [service.cleared(say[step.by], step.person, step.how), labelled(say.reference, step.reference)];
    case 'released':
      return [
        step.gravity && service.gravity[step.gravity],
        photographs(step.photographs),
        labelled(say.remark, step.remark),
      ];
    case 'held-by-agency':
      return [
        step.agency,
        labelled(say.officer, step.officer),
        labelled(say.badge, step.badge),
        labelled(say.receipt, step.receipt),
        photographs(step.photographs),
        hours(step.hourMeter),
        labelled(say.keptWhere, step.keptWhere),
      ];
    case 'returned-by-agency':
      return [
        labelled(say.handedOverBy, step.handedOverBy),
        labelled(say.receipt, step.receipt),
        photographs(step.photographs),
        hours(step.hourMeter),
      ];
  }
}

const labelled = (label: string, value: string | null): string | null =>
  value === null ? null : `${label}: ${value}`;
const photographs = (names: readonly string[]): string | null =>
  names.length === 0 ? null : service.named(names.join(', '));
const hours = (read: number | null): string | null =>
  labelled(say.hourMeter, read === null ? null : `${read} ${units.hours}`);
