/** Energy codes ask of what is built or replaced. What stands already, and is only repaired, is left as it is. */
export function isRepair({ kind }: { readonly kind: string }): boolean {
  return kind === 'service';
}
