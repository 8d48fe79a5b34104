/** A text in quotes for a message, cut short where it is long. */
export function quote(text: string): string {
  return `"${brief(text)}"`
}

/** A text for a message, cut short where it is long. */
export function brief(text: string): string {
  return text.length <= 120 ? text : `${text.slice(0, 117)}...`
}
