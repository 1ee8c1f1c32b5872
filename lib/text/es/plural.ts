import { pluralIn } from '../plural'

export const plural = pluralIn('es')
