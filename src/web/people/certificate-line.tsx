import type { Thing } from '../lists/field-spec.js';
import { PartChange } from '../lists/part-change.js';
import { tellDay } from '../lists/tell-day.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Sign } from '../look/sign.js';
import { people } from '../words/en/people.js';
import { type Certificate, certificateSpecs } from './account.js';

const { certificates: say } = people;

interface LineProps {
  readonly certificate: Certificate;
  readonly touches: readonly string[];
  readonly mayChange: boolean;
  readonly onTakeAway: () => void;
}

/** One certificate: whose, for what, how it stands today. */
export function CertificateLine({ certificate, touches, mayChange, onTakeAway }: LineProps) {
  const { id, personName, title, number, expiresOn, standing } = certificate;
  return (
    <>
      <strong>
        {title}, {personName}
      </strong>
      <span class="thing-state">
        <Sign of={standing === 'out-of-date' ? 'no' : standing === 'ends-soon' ? 'unknown' : 'yes'} />
        {say.standings[standing]}
      </span>
      <span class="quiet">
        {[number, expiresOn !== null && say.until(tellDay(expiresOn))].filter(Boolean).join(' · ')}
      </span>
      {mayChange && (
        <>
          <Fold title={say.change(title, personName)}>
            {() => (
              <PartChange
                path={`/api/certificates/${id}`}
                specs={certificateSpecs}
                thing={certificate as unknown as Thing}
                submit={say.keep}
                touches={touches}
              />
            )}
          </Fold>
          <Button look="plain" onPress={onTakeAway}>
            {say.takeAway(title, personName)}
          </Button>
        </>
      )}
    </>
  );
}
