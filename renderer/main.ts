import { mount } from 'svelte';
import demonstration from '../examples/demonstration.tonne?raw';
import App from './app.svelte';
import { startEngine } from './engine/engine-client.ts';
import { chooseHost } from './host/host.ts';
import { Book } from './session/book.svelte.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/marks.css';
import './styles/print.css';

const target = document.getElementById('book');
if (target === null) throw new Error('The page has no place to open the book in.');

const host = chooseHost();
const book = new Book(host, startEngine(), demonstration);
mount(App, { target, props: { book, host } });
await book.start();
