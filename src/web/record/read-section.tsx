import { flattenSection } from '../../../shared/record/flatten-section.js';
import { Empty, Note } from '../look/notes.js';
import { DefinitionRows } from '../look/section.js';
import { tellHowKnown, tellRecorded } from '../look/tell-recorded.js';
import { overview } from '../words/overview.js';
import { record as say } from '../words/record.js';
import { itemsAt } from './edit-document.js';
import { fullLabel } from './section-label.js';
import type { SectionDraft } from './section-draft.js';

/** A section for those who read and change nothing: what is said in it, line by line. */
export function ReadSection({ draft, timeZone }: { draft: SectionDraft; timeZone: string }) {
  const { section, base } = draft;
  const lines = [...flattenSection(base)].filter(
    ([path]) => !path.endsWith('/id') && itemsAt(base, path).length === 0,
  );
  return (
    <div class="read-section">
      <Note>{say.readOnly}</Note>
      {lines.length === 0 && <Empty>{overview.version.none}</Empty>}
      <DefinitionRows
        rows={lines.map(([path, value]) => ({
          term: fullLabel(section, base, path),
          value: tellRecorded(value, { section, path, timeZone }),
          about: tellHowKnown(value, timeZone),
        }))}
      />
    </div>
  );
}
