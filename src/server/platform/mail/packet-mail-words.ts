/** What the mail about a packet says, in the languages in which renters are written to. */
export const PACKET_WORDS = {
  en: {
    subject: (reference: string) => `Incident ${reference}: a packet waits for you`,
    waits: (reference: string, until: string) =>
      `A packet about incident ${reference} waits for you until ${until}:`,
    opensBy: {
      passcode: 'It opens with a passcode that you are told another way.',
      'sign-in':
        'It opens for you alone: sign in there with your own name and password. There is no passcode.',
    },
    logged:
      'Whoever looks or downloads is written down. Mail passes many hands, so it does not say what happened.',
    witness: (when: string) => `Please keep this mail. The head of the record's log on ${when} was`,
    use: 'With it anybody can check later that what the record said then was not changed.',
  },
  es: {
    subject: (reference: string) => `Incidente ${reference}: un paquete lo espera`,
    waits: (reference: string, until: string) =>
      `Un paquete sobre el incidente ${reference} lo espera hasta el ${until}:`,
    opensBy: {
      passcode: 'Se abre con una clave que le dan por otra vía.',
      'sign-in': 'Se abre solo para usted: entre allí con su propio nombre y contraseña. No hay clave.',
    },
    logged:
      'Queda anotado quien mira o descarga. El correo pasa por muchas manos, por eso no dice lo que ocurrió.',
    witness: (when: string) => `Guarde este correo. El ${when} la cabeza del registro era`,
    use: 'Con ella cualquiera puede comprobar más tarde que no se cambió lo que el registro decía entonces.',
  },
} as const;

export type PacketLanguage = keyof typeof PACKET_WORDS;
