/** Hands the shop to every page. */
import { createContext, use } from 'react';
import type { Shop } from './shop.ts';

export const ShopContext = createContext<Shop | undefined>(undefined);

export function useShop(): Shop {
  const shop = use(ShopContext);
  if (shop === undefined) throw new Error('a page outside the app');
  return shop;
}
