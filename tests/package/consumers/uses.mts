import { isSaltwrightError } from 'saltwright'

export const answer: boolean = isSaltwrightError(new Error('something else'))
