import { Component, type ReactNode } from "react";
import { Button } from "./Button.tsx";
import { Notice } from "./Notice.tsx";

export interface FaultBoundaryProps {
  /** What could not be shown: "The review". */
  readonly what: string;
  /** A button that saves a backup, where there is a logbook to save. */
  readonly backup?: ReactNode;
  /** Told of the fault, for whoever must do more than show it. */
  readonly onFault?: (fault: Error) => void;
  readonly children: ReactNode;
}

/** Catches what a part throws while drawing, says it, and offers a way on. Going anywhere else draws it anew. */
export class FaultBoundary extends Component<FaultBoundaryProps, { fault: Error | undefined }> {
  override state: { fault: Error | undefined } = { fault: undefined };

  static getDerivedStateFromError(fault: unknown): { fault: Error } {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  // The hash names the place, and what is looked at there.
  override componentDidMount(): void {
    window.addEventListener("hashchange", this.drawAgain);
  }

  override componentWillUnmount(): void {
    window.removeEventListener("hashchange", this.drawAgain);
  }

  private readonly drawAgain = () => {
    if (this.state.fault !== undefined) this.setState({ fault: undefined });
  };

  override componentDidCatch(fault: Error): void {
    this.props.onFault?.(fault);
  }

  override render(): ReactNode {
    const { fault } = this.state;
    if (fault === undefined) return this.props.children;
    return (
      <div role="alert">
        <Notice
          tone="caution"
          actions={
            <>
              <Button onClick={this.drawAgain}>Try again</Button>
              <Button onClick={() => window.location.reload()}>Reload</Button>
              {this.props.backup}
            </>
          }
        >
          <p>
            <strong>{this.props.what} could not be shown.</strong> What is stored has not been changed.
          </p>
          <p>{fault.message}</p>
        </Notice>
      </div>
    );
  }
}
