import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { ClaimsPeriod } from '../../../shared/follow-up/claims-clocks.js';
import type { HouseRule } from '../../../shared/follow-up/house-rule.js';
import type { TaskTemplate } from '../../../shared/follow-up/task-template.js';
import { projectRoot } from '../platform/project-root.js';

/** The data of follow-up: templates of tasks, claims clocks, values of house rules. */
export class FollowUpForms {
  private constructor(
    readonly tasks: readonly TaskTemplate[],
    readonly clocks: readonly ClaimsPeriod[],
    readonly houseRules: readonly HouseRule[],
  ) {}

  /**
   * Reads them from `forms/follow-up`.
   * @throws Error when a file does not keep to its schema: the service must not start on half of them
   */
  static read(folder = join(projectRoot(), 'forms', 'follow-up')): FollowUpForms {
    const { tasks } = readForm<{ tasks: TaskTemplate[] }>(folder, 'tasks');
    const { clocks } = readForm<{ clocks: ClaimsPeriod[] }>(folder, 'claims-clocks');
    const { rules } = readForm<{ rules: HouseRule[] }>(folder, 'house-rules');
    return new FollowUpForms(tasks, clocks, rules);
  }
}

function readForm<T>(folder: string, name: string): T {
  const parse = (file: string): unknown => JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile<T>(parse(`${name}.schema.json`) as object);
  const form = parse(`${name}.json`);
  if (validate(form)) return form;
  const faults = (validate.errors ?? []).map(
    ({ instancePath, message }) => `${instancePath} ${message ?? ''}`,
  );
  throw new Error(`forms/follow-up/${name}.json cannot be used: ${faults.join('; ')}`);
}
