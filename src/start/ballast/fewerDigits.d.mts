export default function fewerDigits(source: string): string
