import { createContext } from 'svelte';
import type { Book } from './book.svelte.ts';

export const [useBook, provideBook] = createContext<Book>();
