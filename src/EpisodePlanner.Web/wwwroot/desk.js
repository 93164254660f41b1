// What script adds: copying written pages, and single keys between pages. Every page works without it.
(() => {
  const said = (words) => {
    const line = document.createElement('p');
    line.className = 'said';
    line.setAttribute('role', 'status');
    line.textContent = words;
    document.querySelector('main').prepend(line);
    setTimeout(() => line.remove(), 6000);
  };

  const copy = {
    markdown: async () => navigator.clipboard.writeText(document.getElementById('markdown').value),
    rich: async () => {
      const article = document.getElementById('written');
      const types = {
        'text/html': new Blob([article.innerHTML], { type: 'text/html' }),
        'text/plain': new Blob([article.innerText], { type: 'text/plain' }),
      };
      await navigator.clipboard.write([new ClipboardItem(types)]);
    },
  };

  for (const button of document.querySelectorAll('[data-copy]')) {
    button.hidden = false;
    button.addEventListener('click', async () => {
      try {
        await copy[button.dataset.copy]();
        said('Copied.');
      } catch {
        said('The browser did not allow it. Select the text below and copy it by hand.');
        document.querySelector('details').open = true;
      }
    });
  }

  // A form that was sent once is not sent again by a second tap.
  for (const form of document.querySelectorAll('form')) {
    form.addEventListener('submit', (sending) => {
      if (form.dataset.sent) {
        sending.preventDefault();
      }
      form.dataset.sent = 'yes';
      setTimeout(() => delete form.dataset.sent, 4000);
    });
  }

  // The digits 1 to 9 lead to the pages of the menu, unless something is being typed.
  const pages = [...document.querySelectorAll('.masthead nav a')];
  document.addEventListener('keydown', (key) => {
    const typing = key.target.closest('input, textarea, select, [contenteditable]');
    if (!typing && !key.ctrlKey && !key.metaKey && !key.altKey && key.key >= '1' && key.key <= '9') {
      pages[Number(key.key) - 1]?.click();
    }
  });
})();
