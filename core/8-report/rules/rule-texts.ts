/** Rule ids with what each demands, or what it means where it is broken. */
export type RuleTexts = Readonly<Record<string, string>>;
