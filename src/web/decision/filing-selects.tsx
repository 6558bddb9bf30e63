import { FILING_WAYS, standingFilings } from '../../../shared/decision/filing.js';
import { nameJurisdiction } from '../../../shared/determination/duty-words.js';
import { useAsk } from '../ask/use-ask.js';
import { Select } from '../look/select.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { authoritiesOf, type FilingDraft } from './filing-draft.js';
import type { EvidenceAnswer, FilingsAnswer } from './service-answers.js';
import type { Matter } from './use-matter.js';

interface FilingSelectsProps {
  readonly matter: Matter;
  readonly draft: FilingDraft;
  readonly onChange: (part: Partial<FilingDraft>) => void;
  readonly missing: (is: boolean) => string | null;
}

/** What a filing chooses from lists: the way, the authority, the copy, and the one whose place it takes. */
export function FilingSelects({ matter, draft, onChange, missing }: FilingSelectsProps) {
  const path = `/api/incidents/${matter.id}`;
  const evidence = useAsk<EvidenceAnswer>(`${path}/evidence`).data?.files ?? [];
  const filings = standingFilings(useAsk<FilingsAnswer>(`${path}/filings`).data?.items ?? []);
  const zone = matter.determined.determination.timeZone;
  return (
    <>
      <Select
        label={say.filing.way}
        none={say.filing.choose}
        value={draft.way}
        onChoose={(way) => onChange({ way })}
        groups={[{ options: FILING_WAYS.map((value) => ({ value, label: say.filing.ways[value] })) }]}
        error={missing(draft.way === '')}
      />
      <Select
        label={say.filing.jurisdiction}
        none={say.filing.choose}
        value={draft.jurisdiction}
        onChoose={(jurisdiction) => onChange({ jurisdiction })}
        groups={[
          {
            options: authoritiesOf(matter).map((value) => ({
              value,
              label: value === 'us' ? say.filing.coastGuard : nameJurisdiction(value),
            })),
          },
        ]}
      />
      {evidence.length > 0 && (
        <Select
          label={say.filing.copy}
          none={say.filing.noCopy}
          optional
          value={draft.copy}
          onChoose={(copy) => onChange({ copy })}
          groups={[{ options: evidence.map(({ id, name, kind }) => ({ value: id, label: name ?? kind })) }]}
        />
      )}
      {filings.length > 0 && (
        <Select
          label={say.filing.replaces}
          none={say.filing.replacesNone}
          optional
          value={draft.replaces}
          onChoose={(replaces) => onChange({ replaces })}
          groups={[
            {
              options: filings.map(({ id, to, at }) => ({
                value: id,
                label: `${to}, ${tellInstant(at, zone)}`,
              })),
            },
          ]}
        />
      )}
    </>
  );
}
