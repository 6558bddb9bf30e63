import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { checkRetention } from '../../../shared/retention/check-retention.js';
import type {
  RetentionForm,
  RetentionKind,
  RetentionPeriod,
} from '../../../shared/retention/retention-form.js';
import { withLiveryPeriods } from '../../../shared/retention/livery-periods.js';
import type { HandOverForms } from '../hand-over/hand-over.api.js';
import { projectRoot } from '../platform/project-root.js';

/** How long what is kept and why, from `forms/retention` and the rental records that states ask for. */
export class RetentionForms {
  private readonly byId: ReadonlyMap<string, RetentionPeriod>;

  constructor(readonly form: RetentionForm) {
    this.byId = new Map(form.periods.map((period) => [period.id, period]));
  }

  periodsOf({ periods }: RetentionKind): RetentionPeriod[] {
    return periods.flatMap((id) => this.byId.get(id) ?? []);
  }

  kind(id: string): RetentionKind | undefined {
    return this.form.kinds.find((one) => one.id === id);
  }

  period(id: string): RetentionPeriod | undefined {
    return this.byId.get(id);
  }
}

/**
 * @throws Error when the form does not keep to its schema, or names a period or a kind of field that there is not: the
 * service must not start while it is open what is deleted
 */
export function readRetentionForms(
  { kinds: { kinds: fields } }: Pick<HandOverForms, 'kinds'>,
  packs: readonly RulePack[],
  folder = join(projectRoot(), 'forms', 'retention'),
): RetentionForms {
  const parse = (file: string): unknown => JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile<RetentionForm>(
    parse('retention.schema.json') as object,
  );
  const form = parse('retention.json');
  const faults = validate(form)
    ? checkRetention(form, fields)
    : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
  if (faults.length > 0)
    throw new Error(`forms/retention/retention.json cannot be used: ${faults.join('; ')}`);
  return new RetentionForms(withLiveryPeriods(form as RetentionForm, packs));
}
