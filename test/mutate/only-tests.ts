// The variable that carries the one folder whose tests are held against mutants, from the command to the process that runs them.
export const onlyTests = 'MUTATE_TESTS';
