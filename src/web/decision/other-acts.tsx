import { decision as say } from '../words/decision.js';
import { CallForm } from './call-form.js';
import { FilingForm } from './filing-form.js';
import { Fold } from '../look/fold.js';
import { OperatorForm } from './operator-form.js';
import type { Matter } from './use-matter.js';

/** What can be noted about the incident as a whole. Whoever stood at the dock notes what the operator was told. */
export function OtherActs({ matter, signs }: { matter: Matter; signs: boolean }) {
  return (
    <div class="acts">
      {signs && <Fold title={say.call.title}>{() => <CallForm matter={matter} />}</Fold>}
      <Fold title={say.operatorNotice.title}>{() => <OperatorForm matter={matter} />}</Fold>
      {signs && <Fold title={say.filing.title}>{() => <FilingForm matter={matter} />}</Fold>}
    </div>
  );
}
