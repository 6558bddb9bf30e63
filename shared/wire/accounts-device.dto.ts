import { IdOf, LineFact } from './accounts-facts.js';
import { pinFault } from './accounts-secrets.js';
import { Fact } from './declare-fact.js';
import { InstantFact } from './declare-instant.js';

export class DeviceCreationDto {
  @LineFact('what the device is called, such as "Dock phone 2"', 80)
  name: string;
}

export class DeviceEnrolmentDto {
  @LineFact('the code that an administrator was shown', 40)
  code: string;
}

/** That somebody, by PIN, stands by what was entered on the device in their name. */
export class PinConfirmationDto {
  @IdOf('the account whose name was picked')
  accountId: string;

  @Fact('a PIN of 4 to 8 digits, as text', pinFault)
  pin: string;

  /** When the name was picked. */
  @InstantFact()
  since: string;
}
