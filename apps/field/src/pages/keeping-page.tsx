/** Where the work is: on this device alone, or in files as well; files out and in; what was deleted. */
import { DeletedJobs } from '../keeping/deleted-jobs.tsx';
import { Files } from '../keeping/files.tsx';
import { Notices } from '../keeping/notices.tsx';
import { WhereItIs } from '../keeping/where-it-is.tsx';
import { useText } from '../text/use-text.tsx';
import { BackLink } from '../ui/back-link.tsx';
import '../keeping/keeping.css';

export default function KeepingPage() {
  const text = useText();
  return (
    <main className="page keeping-page">
      <header className="keeping-head">
        <BackLink href="/" />
        <h1>{text.phrase('keeping')}</h1>
      </header>
      <Notices />
      <WhereItIs />
      <Files />
      <DeletedJobs />
    </main>
  );
}
