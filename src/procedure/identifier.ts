// What an id in content may look like, for every schema: short enough for two of them to fit a start link.
import { z } from 'zod';

export const idSchema = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'an id is made of small letters, digits and single hyphens')
  .max(30, 'an id has at most 30 characters, so that two fit into a start link');
