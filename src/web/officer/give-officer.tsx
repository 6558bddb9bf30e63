import { useState } from 'preact/hooks';
import {
  HAND_OVER_BASES,
  type HandedOver,
  type HandOverBasis,
  type Officer,
} from '../../../shared/record/response-sections.js';
import { pressedNow } from '../device/pressed-now.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { useSession } from '../session/session.js';
import { officer as say } from '../words/officer.js';
import { GaveNote, GiveSection } from './give-section.js';
import { lineOf } from './our-craft.js';
import { craftSheets, sheetAsGiven } from './officer-sheet.js';
import { useGive } from './use-give.js';
import type { WholeRecord } from './use-whole-record.js';

const EMPTY = { name: '', agency: '', badge: '' };
const ANOTHER = 'another';

/** To which officer the sheet was given, and why: into the record's section on authorities, one entry a craft. */
export function GiveOfficer({ whole }: { whole: WholeRecord }) {
  const me = useSession().me;
  const known = whole.sections.authorities?.officers ?? [];
  const [chosen, setChosen] = useState<string>(known[0]?.id ?? ANOTHER);
  const [words, setWords] = useState(EMPTY);
  const [basis, setBasis] = useState<HandOverBasis>();
  const [looked, setLooked] = useState(false);
  const { gave, give } = useGive(whole.record.id);
  const officer = known.find(({ id }) => id === chosen);
  const isUnnamed = officer === undefined && words.name.trim() === '' && words.badge.trim() === '';
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (isUnnamed || basis === undefined) return;
    const to = officer ?? newOfficer(words);
    const handedOver = handedOverTo(to, basis, whole, me?.name);
    if (
      !(await give(
        'authorities',
        { ...(officer === undefined && { officers: [to] }), handedOver },
        'officer’s sheet',
      ))
    )
      return;
    setWords(EMPTY);
    setBasis(undefined);
    setLooked(false);
  };
  return (
    <GiveSection title={say.give.title} lead={say.give.lead}>
      <form class="form" onSubmit={(event) => void submit(event)} noValidate>
        {known.length > 0 && (
          <Choice
            legend={say.give.officer}
            value={chosen}
            options={[
              ...known.map((one) => ({
                value: one.id,
                label: lineOf(one.name, one.agency, one.badge) ?? one.id,
              })),
              { value: ANOTHER, label: say.give.another },
            ]}
            onChoose={setChosen}
          />
        )}
        {officer === undefined && (
          <>
            <Field
              label={say.give.name}
              value={words.name}
              onInput={(name) => setWords({ ...words, name })}
              error={looked && isUnnamed ? say.give.lacksOfficer : null}
            />
            <Field
              label={say.give.agency}
              value={words.agency}
              onInput={(agency) => setWords({ ...words, agency })}
            />
            <Field
              label={say.give.badge}
              value={words.badge}
              onInput={(badge) => setWords({ ...words, badge })}
            />
          </>
        )}
        <Choice
          legend={say.give.basis}
          value={basis}
          options={HAND_OVER_BASES.map((value) => ({ value, label: say.give.bases[value] }))}
          onChoose={setBasis}
          error={looked && basis === undefined ? say.give.lacksBasis : null}
        />
        <GaveNote gave={gave} />
        <Button type="submit" look="main">
          {say.give.submit}
        </Button>
      </form>
    </GiveSection>
  );
}

function newOfficer({ name, agency, badge }: typeof EMPTY): Officer {
  return {
    id: `officer-${crypto.randomUUID()}`,
    ...(name.trim() !== '' && { name: name.trim() }),
    ...(agency.trim() !== '' && { agency: agency.trim() }),
    ...(badge.trim() !== '' && { badge: badge.trim() }),
  };
}

/** One entry a craft, so that its numbers stand in their own fields; the version says what the whole sheet showed. */
function handedOverTo(
  to: Officer,
  basis: HandOverBasis,
  whole: WholeRecord,
  by: string | undefined,
): HandedOver[] {
  const { record, sections, fleet, asOf } = whole;
  const shared = {
    officer: to.id,
    at: pressedNow(),
    basis,
    ...(by !== undefined && { by }),
  };
  const source = `version ${record.version} of the record, as of ${asOf}`;
  const sheets = craftSheets(sections, fleet);
  if (sheets.length === 0) {
    return [
      { id: `sheet-${crypto.randomUUID()}`, what: `Officer’s sheet without a craft, ${source}`, ...shared },
    ];
  }
  return sheets.map((sheet) => ({
    id: `sheet-${crypto.randomUUID()}`,
    what: `Officer’s sheet, ${sheet.craft.name}, ${source}`,
    ...shared,
    sheet: sheetAsGiven(sheet),
  }));
}
