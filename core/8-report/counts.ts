/** 1234567 -> 1,234,567; of whole numbers. */
export function groupedDigits(number: number): string {
  return `${number}`.replace(/\B(?=(\d{3})+(?!\d))/g, ",");
}

/** "16 places" */
export function counted(number: number, one: string, many = `${one}s`): string {
  return `${groupedDigits(number)} ${number === 1 ? one : many}`;
}
