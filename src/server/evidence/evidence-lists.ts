import { Injectable } from '@nestjs/common';
import type { CustodyItem, EvidenceFile, OutsideEvidence } from '../../../shared/record/evidence-section.js';
import { ServiceSections } from '../record/record.api.js';
import { KeptList } from './kept-list.js';

/** The list of files, in the section `evidence` of the record. */
@Injectable()
export class EvidenceFiles extends KeptList<EvidenceFile> {
  constructor(sections: ServiceSections) {
    super(sections, 'evidence', 'files');
  }
}

/** The list of things, in the section `custody`. */
@Injectable()
export class CustodyItems extends KeptList<CustodyItem> {
  constructor(sections: ServiceSections) {
    super(sections, 'custody', 'items');
  }
}

/** The list of what others hold, in the section `outside-evidence`. */
@Injectable()
export class OutsideItems extends KeptList<OutsideEvidence> {
  constructor(sections: ServiceSections) {
    super(sections, 'outside-evidence', 'items');
  }
}
