import type { FieldError } from '../kernel/field-error.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import type { DutyRule, Limit, ReadingBasis } from './rule-pack.js';
import { isBetterBasis } from './weigh-basis.js';

type Path = readonly (string | number)[];

/**
 * What must hold between the triggers and the limits of one duty: every trigger has a clock, every clock has a
 * trigger, and a limit's own conditions fit what it limits.
 * @param at reference tokens of the duty in its pack, for example `['notices', 0]`
 * @example checkDutyRule({ ...report, limits: [] }, ['report'])
 * // [{ pointer: '/report/triggers/0', detail: "no limit names 'death': …" }, …]
 */
export function checkDutyRule(duty: DutyRule, at: Path): FieldError[] {
  return [...checkTriggers(duty, at), ...checkLimits(duty, at)];
}

function checkTriggers(duty: DutyRule, at: Path): FieldError[] {
  return duty.triggers.flatMap((trigger, i) => {
    const here = [...at, 'triggers', i];
    const limits = duty.limits.filter((limit) => limit.tests.includes(trigger.test));
    const errors = checkReadingOrder(trigger.readings ?? [], here);
    // What counsel is asked is no event, and has no clock.
    if (trigger.test === 'ask-counsel') return errors;
    if (limits.length === 0) {
      errors.push(
        fault(here, `no limit names '${trigger.test}': add it to one, with time null if no time is stated`),
      );
    } else if (limits.every((limit) => narrows(limit, trigger.test))) {
      errors.push(
        fault(here, `every limit for '${trigger.test}' is narrowed: the other cases have no limit`),
      );
    }
    return errors;
  });
}

/** Does the limit leave out some cases of the test, such as a death after 24 hours? */
function narrows(limit: Limit, test: string): boolean {
  return test === 'death'
    ? limit.deathWithinHours !== undefined
    : test === 'incapacity' && limit.incapacityHours !== undefined;
}

function checkLimits(duty: DutyRule, at: Path): FieldError[] {
  const triggers = new Set(duty.triggers.map((trigger) => trigger.test));
  return duty.limits.flatMap((limit, i) => {
    const here = [...at, 'limits', i];
    const onlyDeath = limit.tests.every((test) => test === 'death');
    const errors = checkReadingOrder(limit.readings ?? [], here);
    limit.tests.forEach((test, j) => {
      if (!triggers.has(test)) errors.push(fault([...here, 'tests', j], `no trigger tests '${test}'`));
    });
    if (limit.deathWithinHours !== undefined && !onlyDeath) {
      errors.push(fault([...here, 'deathWithinHours'], 'only for a limit that is for death alone'));
    }
    if (limit.incapacityHours && !limit.tests.includes('incapacity')) {
      errors.push(fault([...here, 'incapacityHours'], 'only for a limit that names incapacity'));
    }
    if (limit.from === 'death' && !onlyDeath) {
      errors.push(fault([...here, 'from'], "'death' is a start only for a limit that is for death alone"));
    }
    const best = limit.readings?.[0];
    if (best && JSON.stringify(best.time) !== JSON.stringify(limit.time)) {
      errors.push(fault([...here, 'time'], 'is not the time of the first, best-based reading'));
    }
    return errors;
  });
}

function checkReadingOrder(readings: readonly { basis: ReadingBasis }[], at: Path): FieldError[] {
  return readings.flatMap((reading, i) => {
    const before = readings[i - 1];
    return before && isBetterBasis(reading.basis, before.basis)
      ? [fault([...at, 'readings', i], `put the best-based first: ${reading.basis} after ${before.basis}`)]
      : [];
  });
}

function fault(at: Path, detail: string): FieldError {
  return { pointer: jsonPointer(at), detail };
}
