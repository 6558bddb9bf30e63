import { common } from '../words/common.js';

/** Help first: stays at the top of the pages where somebody may be in danger. A tap calls. */
export function CautionStrip() {
  return (
    <aside class="caution-strip" aria-label={common.caution.label}>
      <p class="caution-first">{common.caution.help}</p>
      <p class="caution-ways">
        <a href="tel:911">{common.caution.call911}</a>
        <span>{common.caution.vhf}</span>
      </p>
    </aside>
  );
}
