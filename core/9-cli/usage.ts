import { commands, dialectCommands, optionNames, shortOptions } from "./commands/options.ts";
import { nearest } from "#base";

/** A mistake on the command line. */
export interface UsageError extends Error {
  readonly usage: true;
}

/** Makes a usage error. */
export function usageError(message: string): UsageError {
  return Object.assign(new Error(message), { usage: true as const });
}

/** Whether something thrown is one. */
export function isUsageError(thrown: unknown): thrown is UsageError {
  return thrown instanceof Error && "usage" in thrown;
}

/**
 * What is wrong with a command line, in our words and with the word that was probably meant. What yargs says is the last
 * resort: it speaks of a missing option where a mistyped one stands.
 *
 *     post a.json --dialct b   ->   There is no option --dialct. Did you mean `--dialect`?
 *
 * @param said the message of yargs
 * @param words the command line as it was given
 */
export function explainUsage(said: string, words: readonly string[]): string {
  const option = words.map((word) => /^(--?[^=]+)/.exec(word)?.[1]).find(isUnknownOption);
  if (option !== undefined) {
    const near = nearest(option.replace(/^-+/, ""), optionNames);
    return `There is no option ${option}.${didYouMean(near && `--${near}`)}`;
  }
  const command = unknownCommand(words);
  if (command !== undefined)
    return `There is no command \`${command.word}\`.${didYouMean(nearest(command.word, command.known))}`;
  return inOurWords(said);
}

function isUnknownOption(word: string | undefined): word is string {
  if (word === undefined || word === "--") return false;
  return word.startsWith("--") ? !optionNames.includes(word.slice(2)) : !(word.slice(1, 2) in shortOptions);
}

/** A word where a command belongs that is none, with those that could stand there. */
function unknownCommand(words: readonly string[]): { word: string; known: readonly string[] } | undefined {
  const plain = words.filter((word) => !word.startsWith("-"));
  const known = plain[0] === "dialect" ? dialectCommands : commands;
  const word = plain[0] === "dialect" ? plain[1] : plain[0];
  return word === undefined || known.includes(word) ? undefined : { word, known };
}

/** The help page that belongs to a command line: `tapewright dialect show --help`. */
export function helpPage(words: readonly string[]): string {
  const [first, second] = words;
  const path = [commands.includes(first) ? first : [], dialectCommands.includes(second) ? second : []].flat();
  return ["tapewright", ...(first === "dialect" ? path : path.slice(0, 1)), "--help"].join(" ");
}

function inOurWords(said: string): string {
  const missing = /^Missing required arguments?: (.+)$/.exec(said)?.[1];
  if (missing !== undefined) return `${missing.split(", ").map(longName).join(" and ")} must be given.`;
  const value = /^Not enough arguments following: (.+)$/.exec(said)?.[1];
  if (value !== undefined) return `${longName(value)} needs a value.`;
  if (said.startsWith("Not enough non-option arguments")) return "The name of the file is missing.";
  const choice = /Argument: (.+), Given: "(.*)", Choices: (.+)$/s.exec(said);
  if (choice) return `${longName(choice[1])} can be ${choice[3].replaceAll('"', "")}, and not ${choice[2]}.`;
  const superfluous = /^Unknown arguments?: ([^,]+)/.exec(said)?.[1];
  if (superfluous !== undefined) return `\`${superfluous}\` is one word too many.`;
  return said;
}

/** "d" -> "--dialect" */
export function longName(option: string): string {
  return `--${shortOptions[option] ?? option}`;
}

function didYouMean(word: string | undefined): string {
  return word === undefined ? "" : ` Did you mean \`${word}\`?`;
}
