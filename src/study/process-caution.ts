/** What a technologist would remark on about the process: where, what, and what is usual. Values in the unit the sentence names. */
export type ProcessCaution =
  | {
      readonly kind: 'unusual yield';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: 'unsuited to a drum';
      readonly about: string;
      readonly where: string;
      readonly component: 'wire' | 'wetStrength';
      readonly share: number;
    }
  | {
      readonly kind: 'burns badly';
      readonly about: string;
      readonly where: string;
      readonly label: string;
      readonly value: number;
    }
  | {
      readonly kind: 'edge load';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: 'above limit';
      readonly about: string;
      readonly where: string;
      readonly label: string;
      readonly value: number;
      readonly limit: number;
      readonly unit: '%' | 'kg/t';
    }
  | {
      readonly kind: 'below limit';
      readonly about: string;
      readonly where: string;
      readonly label: string;
      readonly value: number;
      readonly limit: number;
      readonly unit: '%' | 'kg/t';
    }
  | {
      readonly kind: 'too wet to accept';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly limit: number;
    }
  | {
      readonly kind: 'from memory';
      readonly about: string;
      readonly count: number;
      readonly labels: readonly string[];
    }
  | {
      readonly kind: 'beyond the tiers';
      readonly about: string;
      readonly where: string;
      readonly value: number;
      readonly most: number;
      readonly unit: string;
    }
  | { readonly kind: 'gross refining'; readonly about: string; readonly where: string }
  | {
      readonly kind: 'heat below nothing';
      readonly about: string;
      readonly where: string;
      readonly value: number;
    }
  | {
      readonly kind: 'other service';
      readonly about: string;
      readonly where: string;
      readonly value: number;
    };
