import { decision as say } from '../words/decision.js';
import { FilingForm } from './filing-form.js';
import { Fold } from '../look/fold.js';
import type { DutyView } from './service-answers.js';
import { SignForm } from './sign-form.js';
import type { Matter } from './use-matter.js';

interface DutyActsProps {
  readonly matter: Matter;
  readonly view: DutyView;
  /** Whoever is there signs and records filings. */
  readonly signs: boolean;
  readonly onSigned: (said: string) => void;
}

/** What can be done about one report. */
export function DutyActs({ matter, view, signs, onSigned }: DutyActsProps) {
  if (!signs) return <p class="quiet unprinted">{say.sign.onlyManagers}</p>;
  const mayFile = view.outcome !== 'not-required' || view.filings.length > 0;
  return (
    <>
      <Fold title={view.decision === null ? say.sign.open : say.sign.again}>
        {() => <SignForm matter={matter} view={view} onSigned={onSigned} />}
      </Fold>
      {mayFile && (
        <Fold title={view.state === 'supplement-due' ? say.reopened.supplement : say.filing.fileThis}>
          {() => <FilingForm matter={matter} view={view} />}
        </Fold>
      )}
    </>
  );
}
