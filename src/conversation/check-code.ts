// The short code by which staff find a set-up: easy to read aloud, and a slip in one character does not lead to another.
/** Without characters that are mistaken for each other. */
const alphabet = 'ACDEFHJKLMNPRTUVWXY34679';

/** Made from the conversation's number and its count of set-ups; the last character checks the others. */
export function checkCode(conversation: number, setUp: number): string {
  const places = [...digitsOf(conversation, 3), ...digitsOf(setUp, 1)];
  // A prime weight a place: any one slip, and any swap of neighbours, changes the sum.
  const sum = places.reduce((total, digit, place) => total + digit * (2 * place + 5), 7);
  return [...places, sum % alphabet.length].map((digit) => alphabet[digit]).join('');
}

function digitsOf(number: number, fewest: number): number[] {
  const digits: number[] = [];
  for (let rest = number; rest > 0 || digits.length < fewest; rest = Math.floor(rest / alphabet.length)) {
    digits.unshift(rest % alphabet.length);
  }
  return digits;
}
