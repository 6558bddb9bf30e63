import type { ClaimsPeriod } from '../../../shared/follow-up/claims-clocks.js';
import type { HouseRule } from '../../../shared/follow-up/house-rule.js';
import type { TaskTemplate } from '../../../shared/follow-up/task-template.js';
import { readForm } from '../platform/read-form.js';

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
  static read(): FollowUpForms {
    const { tasks } = readForm<{ tasks: TaskTemplate[] }>('follow-up/tasks');
    const { clocks } = readForm<{ clocks: ClaimsPeriod[] }>('follow-up/claims-clocks');
    const { rules } = readForm<{ rules: HouseRule[] }>('follow-up/house-rules');
    return new FollowUpForms(tasks, clocks, rules);
  }
}
