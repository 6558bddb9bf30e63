import type { AskError } from '../ask/ask-error.js';
import { Field } from '../look/field.js';
import { outAndBack as say } from '../words/out-and-back.js';
import type { OutingDraft } from './outing-draft.js';

interface DetailFieldsProps {
  readonly draft: OutingDraft;
  readonly change: (part: Partial<OutingDraft>) => void;
  readonly error: AskError | null;
  /** Something of it was written down before. */
  readonly isOpen: boolean;
}

/** What searchers will ask for if it is not back; each may be left out. */
export function OutingDetailFields({ draft, change, error, isOpen }: DetailFieldsProps) {
  return (
    <>
      <Field
        label={say.form.renter}
        value={draft.renter}
        onInput={(renter) => change({ renter })}
        autoComplete="off"
        error={error?.faultAt('/renter')}
      />
      <Field
        label={say.form.phone}
        type="tel"
        value={draft.phone}
        onInput={(phone) => change({ phone })}
        autoComplete="off"
        error={error?.faultAt('/phone')}
      />
      <details open={isOpen}>
        <summary>{say.form.more}</summary>
        <div class="form">
          <Field
            label={say.form.aboard}
            inputMode="numeric"
            value={draft.aboard}
            onInput={(aboard) => change({ aboard })}
            autoComplete="off"
            error={error?.faultAt('/aboard')}
          />
          <Field
            label={say.form.vehicle}
            hint={say.form.vehicleHint}
            value={draft.vehicle}
            onInput={(vehicle) => change({ vehicle })}
            autoComplete="off"
            error={error?.faultAt('/vehicle')}
          />
          <Field
            label={say.form.riders}
            hint={say.form.ridersHint}
            rows={2}
            value={draft.riders}
            onInput={(riders) => change({ riders })}
          />
          <Field
            label={say.form.fuel}
            value={draft.fuel}
            onInput={(fuel) => change({ fuel })}
            autoComplete="off"
            error={error?.faultAt('/fuel')}
          />
          <Field
            label={say.form.plan}
            rows={2}
            value={draft.plan}
            onInput={(plan) => change({ plan })}
            error={error?.faultAt('/plan')}
          />
          <Field
            label={say.form.remark}
            rows={2}
            value={draft.remark}
            onInput={(remark) => change({ remark })}
            error={error?.faultAt('/remark')}
          />
          <Field
            label={say.form.outAt}
            hint={say.form.outAtHint}
            type="datetime-local"
            value={draft.outAt}
            onInput={(outAt) => change({ outAt })}
            error={error?.faultAt('/outAt')}
          />
        </div>
      </details>
    </>
  );
}
