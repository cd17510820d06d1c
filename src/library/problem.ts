// What is wrong with content, where, and what would be right; for everyone who loads content and for the person who wrote it.

/** Counted from 1, as editors do; both 0 for a folder, which has no lines. */
export interface Place {
  line: number;
  column: number;
}

export interface Problem extends Place {
  /** The program does not start on an error; a warning is only said. */
  level: 'error' | 'warning';
  file: string;
  /** What is wrong, as a whole sentence. */
  message: string;
  /** What would be right, as a whole sentence. */
  mend: string;
}

/** One line for a person, with the place first so that editors can jump to it. */
export function formatProblem(problem: Problem): string {
  const { file, line, column, level, message, mend } = problem;
  const place = line === 0 ? file : `${file}:${line}:${column}`;
  return `${place}  ${level === 'warning' ? 'Warning: ' : ''}${message} Mend: ${mend}`;
}

/** By file and place; warnings before errors, so that what has to be put right stands nearest to the prompt. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return problems.toSorted(
    (a, b) =>
      Number(a.level === 'error') - Number(b.level === 'error') ||
      (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) ||
      a.line - b.line ||
      a.column - b.column,
  );
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.level === 'error');
}
