/** The version of the consent that lib/text holds. A change of meaning is a new one. */
export const consentTextVersion = 1
