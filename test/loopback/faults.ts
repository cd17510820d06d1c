// A script of faults for the loopback platforms: what goes wrong, on which call, how often.

export type Fault =
  /** Too many requests: nothing happens, and the caller is told how long to wait. */
  | { kind: 'wait'; seconds: number; everywhere?: boolean }
  | { kind: 'status'; status: number }
  /** The connection breaks before or after the call took effect. */
  | { kind: 'reset'; after: boolean }
  | { kind: 'slow'; ms: number }
  /** The call took effect, and its answer breaks off in the middle. */
  | { kind: 'half-body' };

export interface Call {
  method: string;
  body: Record<string, unknown>;
}

interface Rule {
  matches: (call: Call) => boolean;
  times: number;
  fault: Fault;
}

export interface FaultScript {
  /** The next `times` calls whose method is the one named (or that match) get the fault. */
  on(method: string | ((call: Call) => boolean), fault: Fault, times?: number): void;
  take(call: Call): Fault | null;
  /** Rules that never came true. */
  unused(): number;
  clear(): void;
}

export function makeFaultScript(): FaultScript {
  const rules: Rule[] = [];
  return {
    on(method, fault, times = 1) {
      const matches = typeof method === 'string' ? (call: Call) => call.method === method : method;
      rules.push({ matches, fault, times });
    },
    take(call) {
      const rule = rules.find((one) => one.times > 0 && one.matches(call));
      if (!rule) return null;
      rule.times -= 1;
      return rule.fault;
    },
    unused: () => rules.filter((rule) => rule.times > 0).length,
    clear: () => {
      rules.length = 0;
    },
  };
}
